import fc from 'fast-check';
import type { z } from 'zod';
import type { AgentLink } from '../../src/catalogue/agent.ts';
import { type Component, extent as extentSchema, level } from '../../src/catalogue/component.ts';
import { dateStatement, edtfDate } from './arbitrary-dates.ts';
import { nastyProse, nastyText } from './hostile-text.ts';

/** `{ a: undefined }` without the `a`: the model knows no property that is there and undefined. */
export type Compact<T> = { [K in keyof T as undefined extends T[K] ? never : K]: T[K] } & {
  [K in keyof T as undefined extends T[K] ? K : never]?: Exclude<T[K], undefined>;
};
export function compact<T extends object>(value: T): Compact<T> {
  return Object.fromEntries(Object.entries(value).filter(([, entry]) => entry !== undefined)) as Compact<T>;
}

/** Only what the model lets in: values at its edge go in as long as it has not been drawn tighter. */
export const fitting = <T>(arbitrary: fc.Arbitrary<T>, schema: z.ZodType): fc.Arbitrary<T> =>
  arbitrary.filter((value) => schema.safeParse(value).success);

/** There or not, evenly. */
export const maybe = <T>(arbitrary: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> =>
  fc.option(arbitrary, { nil: undefined, freq: 2 });

const few = <T>(arbitrary: fc.Arbitrary<T>, maxLength = 3) => fc.array(arbitrary, { maxLength });

// Codes that stand in ISO 639-2/B, ISO 15924 and ISO 3166-1 (the Schematron rules look them up).
const LANGUAGES = ['eng', 'nor', 'fre', 'ger', 'rus', 'heb', 'ara', 'chi', 'mul', 'und', 'zxx'] as const;
const SCRIPTS = ['Latn', 'Cyrl', 'Hebr', 'Arab', 'Hant', 'Zyyy'] as const;
const COUNTRIES = ['US', 'NO', 'DE', 'GB', 'CA'] as const;
// Shapes of ISO 15511: a country, one letter, three or four letters; a colon, a slash, the longest.
const ISILS = ['US-CtY', 'NO-2030000', 'O-x', 'OCLC-COO', 'ZDB-1-ABC:/2', 'DE-12345678901'] as const;

export const languageUse = fc
  .record({
    code: fc.constantFrom(...LANGUAGES),
    name: nastyText,
    script: maybe(fc.record({ code: fc.constantFrom(...SCRIPTS), name: nastyText })),
  })
  .map(compact);

export const repository = fc
  .record({
    name: nastyText,
    address: maybe(few(nastyText)),
    country: maybe(fc.constantFrom(...COUNTRIES)),
    isil: maybe(fc.constantFrom(...ISILS)),
  })
  .map(compact);

const quantity = fc.oneof(
  { weight: 6, arbitrary: fc.integer({ min: 1, max: 100_000 }) },
  { weight: 3, arbitrary: fc.integer({ min: 1, max: 9999 }).map((hundredths) => hundredths / 100) },
  { weight: 1, arbitrary: fc.constantFrom(1e-7, 1e21, 0.1 + 0.2, Number.MAX_SAFE_INTEGER) },
);

export const extent = fc
  .record({
    type: fc.constantFrom('materialtype' as const, 'carrier' as const, 'spaceoccupied' as const),
    coverage: fc.constantFrom('whole' as const, 'part' as const),
    quantity: fitting(quantity, extentSchema.shape.quantity),
    unit: nastyText,
    approximate: maybe(fc.boolean()),
    dimensions: maybe(nastyText),
    facets: maybe(few(nastyText)),
  })
  .map(compact);

const digitalCopy = fc
  .record({
    // A finding aid that was taken in may have paths from the root of somebody's server.
    file: fc.oneof(
      fc.constantFrom(
        'copies/heron 1.tif',
        'https://example.org/a?b=1&c=2#d',
        '/heron/1.tif',
        '//heron/1.tif',
      ),
      nastyText,
    ),
    origin: fc.constantFrom('derived' as const, 'borndigital' as const, 'unknown' as const),
    title: maybe(nastyText),
    note: maybe(nastyProse),
    mediaType: maybe(fc.constantFrom('image/tiff', 'image/jpeg')),
    sha256: maybe(fc.string({ unit: fc.constantFrom(...'0123456789abcdef'), minLength: 64, maxLength: 64 })),
  })
  .map(compact);

const accessPoint = fc
  .record({
    type: fc.constantFrom(...(['subject', 'place', 'genre', 'occupation', 'function', 'title'] as const)),
    term: nastyText,
    source: maybe(fc.oneof(fc.constantFrom('aat', 'lcsh', 'local'), nastyText)),
    identifier: maybe(nastyText),
  })
  .map(compact);

const roles = fc.oneof(fc.constantFrom('photographer', 'correspondent', 'pht'), nastyText);

const PROSE = [
  ...(['abstract', 'languageNote', 'biographicalHistory', 'custodialHistory', 'acquisition'] as const),
  ...(['scopeAndContent', 'appraisal', 'accruals', 'arrangement', 'useConditions', 'legalStatus'] as const),
  ...(['physicalCharacteristics', 'technicalRequirements', 'otherFindingAids', 'originals'] as const),
  ...(['copies', 'relatedMaterial', 'separatedMaterial', 'publications', 'preferredCitation'] as const),
  'processing',
] as const;
type Prose = Partial<Record<(typeof PROSE)[number], string>>;

const someProse: fc.Arbitrary<Prose> = fc.oneof(
  { weight: 8, arbitrary: fc.dictionary(fc.constantFrom(...PROSE), nastyProse, { maxKeys: 4 }) },
  { weight: 1, arbitrary: fc.record(Object.fromEntries(PROSE.map((name) => [name, nastyProse]))) },
);

/** A component before it has its id and its place: where containers stand in one another is told by position. */
export type Draft = Omit<Component, 'id' | 'children' | 'containers'> & {
  containers: { type: string; number: string; named: boolean; inside: number | undefined }[];
};

/** The fields of one component; `agents` are the ids that its links may point to. */
export function draft(agents: readonly string[]): fc.Arbitrary<Draft> {
  const links =
    agents.length === 0
      ? fc.constant<AgentLink[]>([])
      : few<AgentLink>(fc.record({ agent: fc.constantFrom(...agents), role: maybe(roles) }).map(compact));
  return fc
    .record({
      level: fc.constantFrom(...level.options),
      otherLevel: nastyText,
      referenceCode: maybe(fc.oneof(fc.constantFrom('QF/1/2', 'QF.3'), nastyText)),
      otherIdentifiers: few(fc.record({ type: nastyText, value: nastyText }), 2),
      title: nastyText,
      dates: few(dateStatement),
      extents: few(extent),
      physicalDescription: maybe(nastyText),
      creators: links,
      repository: fc.option(repository, { nil: undefined, freq: 2 }),
      prose: someProse,
      languages: few(languageUse),
      containers: few(
        fc.record({
          type: fc.oneof(fc.constantFrom('box', 'folder', 'oversize folder'), nastyText),
          number: nastyText,
          named: fc.boolean(),
          inside: maybe(fc.nat({ max: 2 })),
        }),
      ),
      physicalLocation: maybe(nastyText),
      digitalCopies: few(digitalCopy),
      accessConditions: maybe(
        fc
          .record({
            statement: nastyProse,
            until: maybe(fc.oneof({ weight: 4, arbitrary: edtfDate }, { weight: 1, arbitrary: nastyText })),
            restricted: fc.boolean(),
          })
          .map(compact),
      ),
      generalNotes: few(fc.record({ head: maybe(nastyText), text: nastyProse }).map(compact)),
      people: links,
      accessPoints: few(accessPoint, 4),
    })
    .map(({ prose, otherLevel, ...fields }) =>
      compact({ ...fields, ...prose, otherLevel: fields.level === 'otherlevel' ? otherLevel : undefined }),
    );
}
