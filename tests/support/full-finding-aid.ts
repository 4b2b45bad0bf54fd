import { z } from 'zod';
import { type FindingAid, findingAid } from '../../src/catalogue/finding-aid.ts';
import { fieldsOf, schemasAt } from '../../src/catalogue/schema-at.ts';

/** A text that occurs once in a finding aid, fit for an id as well. */
export const MARKER = /^Mark\d+end$/;

/** Values of fields that take no text of one's choice, and another to put in the place of the first. */
const CHOICES: Readonly<Record<string, readonly [string, string]>> = {
  'component.dates[].edtf': ['1871-03-17', '1872-04-18'],
  'component.accessConditions.until': ['2041-06-07', '2042-07-08'],
  'component.languages[].code': ['nor', 'heb'],
  'component.languages[].script.code': ['Latn', 'Hebr'],
  'component.digitalCopies[].sha256': ['a'.repeat(64), 'b'.repeat(64)],
  'component.repository.country': ['NO', 'DE'],
  'component.repository.isil': ['NO-QuillA', 'DE-QuillB'],
  // Vocabularies for which DCMI terms have an encoding scheme.
  'component.accessPoints[].source': ['lcsh', 'mesh'],
  'agent.birth': ['1861-02-03', '1862-03-04'],
  'agent.death': ['1934-05-06', '1935-06-07'],
  'control.languages[].code': ['nor', 'heb'],
  'control.languages[].script.code': ['Latn', 'Hebr'],
  'control.maintenanceAgency.country': ['US', 'CA'],
  'control.maintenanceAgency.isil': ['US-QuillC', 'CA-QuillD'],
  'control.history[].date': ['2026-05-14', '2025-04-13'],
};

/** Fields that point to an agent; the finding aid below sets them. */
const LINKS = /\.(?:creators|people|relations)\[\]\.agent$/;

/** The parts of the model that describe nothing: how the file is known, and to whom it goes. */
const NO_DESCRIPTION = new Set(['format', 'version', 'recipient']);
/** What was taken in is kept as it was found: it tells in XML what other fields tell, and more. */
const AS_FOUND = 'kept';

/** A field of the model that holds no further fields. */
export interface Leaf {
  /** Where it stands in a finding aid, such as collection, dates, 0, edtf. */
  path: readonly (string | number)[];
  /** The same as the crosswalk writes it: component.dates[].edtf. */
  field: string;
  value: string | number | boolean;
  /** The object that holds it. */
  holder: unknown;
}

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null;

const below = (field: string, key: string): string => {
  if (field === '') return key === 'collection' ? 'component' : key === 'people' ? 'agent' : key;
  return key === 'children' ? 'component' : `${field}.${key}`;
};

/** Every field of the model that describes something, by its path; `component.children[]` stands for the parts. */
export function fieldsOfModel(): string[] {
  const walk = (schema: z.core.$ZodType, field: string): string[] => {
    const [choice] = schemasAt(schema, []);
    if (choice instanceof z.ZodArray) {
      const list = field === 'agent' || field === 'component' ? field : `${field}[]`;
      return walk(choice.element, list);
    }
    if (!(choice instanceof z.ZodObject)) return [field];
    return fieldsOf(choice).flatMap(([key, value]) => {
      if ((field === '' && NO_DESCRIPTION.has(key)) || key === AS_FOUND) return [];
      return key === 'children' ? ['component.children[]'] : walk(value, below(field, key));
    });
  };
  return walk(findingAid, '');
}

/** Every leaf of a finding aid. */
export function leavesOf(aid: FindingAid): Leaf[] {
  const leaves: Leaf[] = [];
  const walk = (value: unknown, path: readonly (string | number)[], field: string, holder: unknown) => {
    if (Array.isArray(value)) {
      const list = field === 'agent' || field === 'component' ? field : `${field}[]`;
      for (const [at, entry] of value.entries()) walk(entry, [...path, at], list, holder);
    } else if (isObject(value)) {
      for (const [key, entry] of Object.entries(value)) {
        if (field === '' && NO_DESCRIPTION.has(key)) continue;
        walk(entry, [...path, key], below(field, key), value);
      }
    } else if (value !== undefined) leaves.push({ path, field, value: value as Leaf['value'], holder });
  };
  walk(aid, [], '', undefined);
  return leaves;
}

/**
 * A finding aid in which every field is filled, most with a text that occurs nowhere else. Lists whose members differ
 * by a type have one of each; beside what is full there is a bare agent and a bare unit, for what is only told there.
 */
export function fullFindingAid(): FindingAid {
  let count = 100;
  const marker = () => `Mark${++count}end`;
  const fill = (
    schema: z.core.$ZodType,
    field: string,
    set: Readonly<Record<string, string>> = {},
  ): unknown => {
    const [choice] = schemasAt(schema, []);
    if (choice instanceof z.ZodArray) return list(choice.element, `${field}[]`);
    if (choice instanceof z.ZodObject) {
      const entries = fieldsOf(choice)
        .filter(([key]) => key !== AS_FOUND)
        .map(([key, value]) => [key, set[key] ?? (key === 'children' ? [] : fill(value, `${field}.${key}`))]);
      return Object.fromEntries(entries);
    }
    if (choice instanceof z.ZodEnum) return choice.options[0];
    if (choice instanceof z.ZodNumber) return ++count;
    // A closed thing does not tell its copies everywhere.
    if (choice instanceof z.ZodBoolean) return field !== 'component.accessConditions.restricted';
    if (choice instanceof z.ZodLiteral) return [...choice.values][0];
    return CHOICES[field]?.[0] ?? marker();
  };
  const list = (schema: z.core.$ZodType, field: string): unknown[] => {
    for (const key of ['type', 'origin']) {
      const [kind] = schemasAt(schema, [key]);
      if (kind instanceof z.ZodEnum)
        return kind.options.map((one) => fill(schema, field, { [key]: `${one}` }));
    }
    return [fill(schema, field)];
  };

  const { people: people_, collection: collection_, control } = findingAid.shape;
  const [agent] = schemasAt(people_, [0]);
  const [component] = schemasAt(collection_, []);
  if (agent === undefined || component === undefined)
    throw new Error('The model has no agents or components.');
  const people = ['person', 'family', 'corporateBody'].flatMap((type) => [
    fill(agent, 'agent', { type }) as { id: string; relations: { agent: string }[] },
    { id: marker(), type, name: marker() },
  ]);
  for (const one of people) {
    if ('relations' in one) for (const relation of one.relations) relation.agent = people[0]?.id ?? '';
  }
  const unit = (level: string) => ({
    ...(fill(component, 'component', { level }) as object),
    creators: people.map(({ id }) => ({ agent: id, role: marker() })),
    people: [
      ...people.map(({ id }) => ({ agent: id, role: marker() })),
      ...people.map(({ id }) => ({ agent: id })),
      ...people.map(({ id }) => ({ agent: id, role: 'copyright holder' })),
    ],
  });
  const bare = { id: marker(), level: 'file', title: marker() };
  return findingAid.parse({
    format: 'kinfonds finding aid',
    version: 1,
    control: fill(control, 'control'),
    people,
    collection: { ...unit('collection'), children: [unit('file'), bare] },
  });
}

/** The finding aid with another value in one leaf: one of the model's, where the model leaves no choice. */
export function withAnother(aid: FindingAid, { path, field, value }: Leaf): FindingAid {
  const copy: unknown = structuredClone(aid);
  let holder = copy;
  for (const step of path.slice(0, -1)) holder = isObject(holder) ? holder[step] : undefined;
  const last = path.at(-1);
  if (!isObject(holder) || last === undefined) throw new Error(`There is no ${path.join('.')}.`);
  holder[last] = other(aid, path, field, value);
  return findingAid.parse(copy);
}

function other(aid: FindingAid, path: Leaf['path'], field: string, value: Leaf['value']): Leaf['value'] {
  if (typeof value === 'number') return value + 1;
  if (typeof value === 'boolean') return !value;
  const choices = CHOICES[field];
  if (choices !== undefined) return choices[0] === value ? choices[1] : choices[0];
  if (LINKS.test(field)) return aid.people.find(({ id }) => id !== value)?.id ?? value;
  const [schema] = schemasAt(findingAid, path);
  if (schema instanceof z.ZodEnum) return `${schema.options.find((one) => one !== value)}`;
  return 'Another text';
}

/** Whether a leaf is told apart by its text; any other shows only in what changes with it. */
export const isMarked = ({ value, field }: Leaf): boolean =>
  typeof value === 'string' && MARKER.test(value) && !LINKS.test(field);
