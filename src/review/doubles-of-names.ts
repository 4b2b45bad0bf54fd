import { addTo } from '../catalogue/add-to.ts';
import type { Agent } from '../catalogue/agent.ts';
import type { Catalogue } from '../catalogue/catalogue.ts';
import type { Finding } from '../catalogue/finding.ts';
import type { FindingAid } from '../catalogue/finding-aid.ts';
import type { Thing } from '../catalogue/thing.ts';
import { maybeTwo } from '../intake/names.ts';
import { agentsByName } from './agents-by-name.ts';
import { type NameRead, namesAlike, readName } from './names-alike.ts';
import { sayRows } from './said-together.ts';

/** A person, family or organisation with the ways in which the name is written, and where in the list it stands. */
interface Named {
  agent: Agent;
  /** Whether `collection.yaml` names it; those that it names are told apart there. */
  isKnown: boolean;
  forms: readonly NameRead[];
  cells: readonly Cell[];
}

interface Cell {
  row: number;
  column: 'people' | 'creator';
}

/** So many are named who may be meant. */
const FEW = 3;

/** Names of the list that may be another way of writing somebody else's. */
export function namesNearlyAlike({ settings, things }: Catalogue, aid: FindingAid): Finding[] {
  const cells = cellsOf(things, aid);
  const named = aid.people.flatMap((agent, at): Named[] => {
    const isKnown = at < settings.people.length;
    // Two people whom a cell names as one are another way of writing neither.
    if (!isKnown && agent.type === 'person' && maybeTwo(agent.name)) return [];
    const forms = [agent.name, ...(agent.variants ?? [])].map((name) => readName(name, agent.type));
    return [{ agent, isKnown, forms, cells: cells.get(agent) ?? [] }];
  });
  const byKey = gather(named, ({ key }) => [key]);
  const byWord = gather(named, ({ type, words }) =>
    type === 'person' && words.length > 1 ? [words[0] ?? '', words.at(-1) ?? ''] : [],
  );
  const order = new Map(named.map((one, at) => [one, at]));
  const isBetter = (one: Named, other: Named) =>
    one.isKnown ||
    one.cells.length > other.cells.length ||
    (one.cells.length === other.cells.length && (order.get(one) ?? 0) < (order.get(other) ?? 0));

  return named.flatMap((one): Finding[] => {
    const [form] = one.forms;
    if (one.isKnown || form === undefined) return [];
    const isSingle = form.type === 'person' && form.words.length === 1;
    const meant = isSingle
      ? (byWord.get(form.words[0] ?? '') ?? [])
      : (byKey.get(form.key) ?? []).filter(
          (other) => isBetter(other, one) && other.forms.some((its) => namesAlike(form, its)),
        );
    const others = meant.filter((other) => other !== one && !standTogether(one, other));
    return others.length === 0 ? [] : [findingOf(one, others)];
  });
}

/** The cells in which each stands, however its name is written. */
function cellsOf(things: readonly Thing[], aid: FindingAid): Map<Agent, Cell[]> {
  const agentOf = agentsByName(aid);
  const cells = new Map<Agent, Cell[]>();
  const add = (name: string, cell: Cell) => {
    const agent = agentOf(name);
    if (agent === undefined) return;
    addTo(cells, agent, cell);
  };
  for (const { row, people, creators } of things) {
    for (const name of people) add(name, { row, column: 'people' });
    for (const name of creators) add(name, { row, column: 'creator' });
  }
  return cells;
}

function gather(
  named: readonly Named[],
  keysOf: (form: NameRead) => readonly string[],
): Map<string, Named[]> {
  const found = new Map<string, Named[]>();
  for (const one of named) {
    for (const key of new Set(one.forms.flatMap(keysOf))) {
      addTo(found, key, one);
    }
  }
  return found;
}

/** Whoever lists two names in one cell means two people. */
function standTogether(one: Named, other: Named): boolean {
  const [few, many] = one.cells.length < other.cells.length ? [one, other] : [other, one];
  const places = new Set(few.cells.map(({ row, column }) => `${row} ${column}`));
  return many.cells.some(({ row, column }) => places.has(`${row} ${column}`));
}

function findingOf(one: Named, others: readonly Named[]): Finding {
  const [cell] = one.cells;
  const { name } = one.agent;
  const known = others.find(({ isKnown }) => isKnown)?.agent.name;
  const said = others.slice(0, FEW).map(({ agent }) => `“${agent.name}”`);
  const more = others.length > FEW ? ` or one of ${others.length - FEW} more` : '';
  const where = cell === undefined ? 'in collection.yaml' : sayRows(one.cells.map(({ row }) => row));
  return {
    rule: 'doubles.near-name',
    weight: 'consider',
    place: cell === undefined ? { file: 'collection.yaml' } : { file: 'list.csv', ...cell },
    found: `“${name}” (${where}) may be another way of writing ${said.join(' or ')}${more}.`,
    advice:
      known === undefined
        ? 'If it is, write the name in one way throughout; if not, add both names under “people” in collection.yaml.'
        : `If it is, add “${name}” to “also” under that name in collection.yaml; if not, add it under “people”.`,
    source: 'DACS 2.6; common practice',
  };
}
