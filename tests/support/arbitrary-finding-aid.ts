import fc from 'fast-check';
import { type Component, level } from '../../src/catalogue/component.ts';
import {
  control as controlSchema,
  type FindingAid,
  LANGUAGE_CODES,
} from '../../src/catalogue/finding-aid.ts';
import { agents } from './arbitrary-agents.ts';
import {
  compact,
  type Draft,
  draft,
  extent,
  fitting,
  languageUse,
  maybe,
  repository,
} from './arbitrary-component.ts';
import { dateStatement, plainDate } from './arbitrary-dates.ts';
import { nastyProse, nastyText } from './hostile-text.ts';

interface Tree {
  unit: Draft;
  parts: Tree[];
}

/** Bushy trees, flat ones, and chains as deep as a careless program makes them. */
function trees(unit: fc.Arbitrary<Draft>, largest: number): fc.Arbitrary<Tree> {
  const { bush } = fc.letrec<{ bush: Tree }>((tie) => ({
    bush: fc.oneof(
      { depthSize: 'medium' },
      fc.record({ unit, parts: fc.constant<Tree[]>([]) }),
      fc.record({ unit, parts: fc.array(tie('bush'), { minLength: 1, maxLength: 3 }) }),
    ),
  }));
  const leaves = fc.array(unit, { maxLength: largest });
  const flat = fc
    .tuple(unit, leaves)
    .map(([top, list]) => ({ unit: top, parts: list.map((leaf) => ({ unit: leaf, parts: [] })) }));
  const chain = fc
    .tuple(unit, leaves)
    .map(([top, list]) => [top, ...list].reduceRight<Tree[]>((parts, link) => [{ unit: link, parts }], []))
    .map(([tree]) => tree)
    .filter((tree) => tree !== undefined);
  return fc.oneof(
    { weight: 5, arbitrary: bush },
    { weight: 1, arbitrary: flat },
    { weight: 1, arbitrary: chain },
  );
}

/** Gives every component and container its id, and lets containers stand in those named before them. */
function numbered(tree: Tree, style: string): Component {
  let count = 0;
  const place = ({ unit, parts }: Tree): Component => {
    const id = `${style}${++count}`;
    const named: string[] = [];
    const containers = unit.containers.map(({ type, number, named: hasId, inside }, index) => {
      const parent = inside === undefined ? undefined : named[inside % Math.max(named.length, 1)];
      const own = hasId ? `${id}_${index}` : undefined;
      if (own !== undefined) named.push(own);
      return compact({ id: own, type, number, parent });
    });
    return { ...unit, id, containers, children: parts.map(place) };
  };
  return place(tree);
}

const recipient = fc
  .record({
    repository,
    languageCodes: fc.constantFrom(...LANGUAGE_CODES),
    separator: fc.oneof(fc.constantFrom('; ', '|', '||'), nastyText),
    recordsDownTo: fc.constantFrom(...level.options),
  })
  .map(({ repository, ...rest }) => ({ ...repository, ...rest }));

const eventTime = fc.oneof(
  {
    weight: 6,
    arbitrary: fc.constantFrom('2026', '2026-05', '2026-05-14', '2026-05-14T10:20:30Z', '1900-01-01'),
  },
  // At the edge: the end of the years that EAD3 knows, and instants and days that look right and do not exist.
  {
    weight: 1,
    arbitrary: fc.constantFrom('2099-12-31T23:59:59-12:00', '2026-02-30', '2026-05-14T25:00:00Z'),
  },
);

const control = fc
  .record({
    recordId: nastyText,
    title: nastyText,
    subtitle: maybe(nastyText),
    author: maybe(nastyText),
    edition: maybe(nastyText),
    publisher: maybe(nastyText),
    publisherAddress: maybe(fc.array(nastyText, { maxLength: 3 })),
    publicationDate: maybe(fc.oneof(plainDate, nastyText)),
    maintenanceStatus: fc.constantFrom('new' as const, 'revised' as const, 'derived' as const),
    publicationStatus: fc.constantFrom(
      'inprocess' as const,
      'approved' as const,
      'published' as const,
      undefined,
    ),
    maintenanceAgency: repository,
    languages: fc.array(fitting(languageUse, controlSchema.shape.languages.element), {
      minLength: 1,
      maxLength: 3,
    }),
    conventions: fc.array(fc.record({ abbreviation: maybe(nastyText), citation: nastyText }).map(compact), {
      minLength: 1,
      maxLength: 3,
    }),
    rights: fc.array(
      fc
        .record({ citation: nastyText, address: maybe(nastyText), statement: maybe(nastyProse) })
        .map(compact),
      { maxLength: 2 },
    ),
    sources: fc.array(nastyText, { maxLength: 2 }),
    history: fc.array(
      fc
        .record({
          type: fc.constantFrom(...(['created', 'revised', 'derived', 'updated', 'unknown'] as const)),
          date: fitting(eventTime, controlSchema.shape.history.element.shape.date),
          agent: nastyText,
          agentType: fc.constantFrom('human' as const, 'machine' as const),
          description: maybe(nastyProse),
        })
        .map(compact),
      { minLength: 1, maxLength: 3 },
    ),
  })
  .map(compact);

/** What DACS, chapter 1, requires of the top level, and 8.2 of the description, where it is not there already. */
const essentials = fc.record({
  referenceCode: nastyText,
  date: dateStatement,
  extent,
  repository,
  language: languageUse,
  scopeAndContent: nastyProse,
  access: nastyProse,
  rights: nastyText,
});

/**
 * Finding aids of every shape that the model allows. Links point to agents that are there, and ids are unique.
 * @param of.complete whether all that DACS requires at the top is there (default); else any of it may be missing
 * @param of.largest how many parts a flat list or a chain has at most
 */
export function arbitraryFindingAid(
  of: { complete?: boolean; largest?: number } = {},
): fc.Arbitrary<FindingAid> {
  const { complete = true, largest = 12 } = of;
  return agents.chain((people) =>
    fc
      .record({
        control,
        tree: trees(draft(people.map(({ id }) => id)), largest),
        style: fc.constantFrom('c', '_', 'QF-1.', 'Part_'),
        must: essentials,
        recipient: maybe(recipient),
      })
      .map(({ control, tree, style, must, recipient }): FindingAid => {
        const aid = {
          ...({ format: 'kinfonds finding aid', version: 1, control, people } as const),
          ...(recipient && { recipient }),
        };
        const collection = numbered(tree, style);
        if (!complete) return { ...aid, collection };
        const { dates, extents, languages } = collection;
        return {
          ...aid,
          control: {
            ...control,
            rights: control.rights.length > 0 ? control.rights : [{ citation: must.rights }],
          },
          collection: {
            ...collection,
            referenceCode: collection.referenceCode ?? must.referenceCode,
            dates: dates.length > 0 ? dates : [must.date],
            extents: extents.length > 0 ? extents : [must.extent],
            repository: collection.repository ?? must.repository,
            languages: languages.length > 0 ? languages : [must.language],
            scopeAndContent: collection.scopeAndContent ?? must.scopeAndContent,
            accessConditions: collection.accessConditions ?? { statement: must.access, restricted: false },
          },
        };
      }),
  );
}
