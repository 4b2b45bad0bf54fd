import {
  elementsOf,
  NO_PLACE,
  type Places,
  type Row,
  type Targets,
  WITHIN,
} from '../../src/export/crosswalk/row.ts';
import { DACS, ISAD_G } from '../../src/export/crosswalk/standards.ts';
import { CROSSWALK_PARTS } from '../../src/export/crosswalk.ts';
import { KIND_TYPES } from '../../src/export/dublin-core/dcmi-types.ts';

const INTRODUCTION = `# The crosswalk

Where each element of the model goes in every format that \`kinfonds export\` writes. This page is made from the table
in \`src/export/crosswalk.ts\`, from which the Dublin Core writers also run; a test fails when the two differ
(\`npx vitest run tests/standards/crosswalk-page.test.ts -u\` writes the page anew).

How to read it:

- *Element* is a path in \`finding-aid.json\`. \`component\` is the collection and every unit in it, \`agent\` one of the
  people; \`[]\` is any member of a list. In brackets stands what else must hold: \`(type subject)\`.
- *EAD3*, *EAD 2002*, *EAC-CPF*: the path without the root element. \`archdesc\` stands for itself and, further down, for
  every \`c\`. Choices stand in braces. In EAC-CPF, what is said of a component is told of the collection only.
- *Dublin Core* is simple Dublin Core (\`oai_dc\` and \`dublin-core.csv\`), *DCMI terms* the qualified records. An element
  in brackets takes the field together with others in one value: the unit of an extent with its quantity.
- *inherited*: a unit that says nothing itself is told with the value of the nearest unit above, since a record of
  Dublin Core stands alone.
- *no place*: the format has none. A record of Dublin Core tells of one resource (the one-to-one principle), so what
  describes the makers of the collection or its finding aid has no place there.

A finding aid that was taken in keeps, in \`component.kept\` and \`control.kept\`, what it holds beyond these elements. An
export in the version of EAD it came in writes that back in its place; one in the other version writes of it what that
version has the same means for.

JSON holds everything; \`finding-aid.csv\` is a plain table that follows no standard.
`;

const KINDS = `## Kinds of material and DCMI types

The term of the DCMI Type Vocabulary for each kind in the table of kinds. A kind that is not there has none.
`;

/** The page `docs/crosswalk.md`, in Markdown. */
export function crosswalkPage(): string {
  const parts = CROSSWALK_PARTS.map(
    ({ title, rows }) =>
      `## ${title}\n\n${table(
        ['Element', 'ISAD(G)', 'DACS', 'EAD3', 'EAD 2002', 'EAC-CPF', 'Dublin Core', 'DCMI terms'],
        rows.map(cellsOf),
      )}`,
  );
  const kinds = table(
    ['Kind', 'DCMI type', 'Why'],
    KIND_TYPES.map(({ kind, type, source }) => [kind, type ?? 'none', source]),
  );
  return [INTRODUCTION, ...parts, `${KINDS}\n${kinds}`].join('\n');
}

function cellsOf({ field, when, isadG, dacs, ead3, ead2002, eacCpf, dc, dcterms, inherited }: Row): string[] {
  const condition = Object.entries(when ?? {}).map(([key, value]) => ` (${key} ${value})`);
  return [
    `\`${field}\`${condition.join('')}${inherited ? ', inherited' : ''}`,
    isadG === undefined ? '' : `${isadG} ${ISAD_G[isadG]}`,
    dacs === undefined ? '' : `${dacs} ${DACS[dacs]}`,
    ...[ead3, ead2002, eacCpf].map(placesCell),
    targetsCell(dc),
    targetsCell(dcterms),
  ];
}

/** Choices in braces: a vertical bar would end the cell. */
function placesCell(places: Places): string {
  if (places === NO_PLACE) return NO_PLACE;
  return (typeof places === 'string' ? [places] : places)
    .map((path) =>
      path.split('/').map((step) => (step.includes('|') ? `{${step.replaceAll('|', ',')}}` : step)),
    )
    .map((steps) => `\`${steps.join('/')}\``)
    .join('<br>');
}

function targetsCell<Name extends string>(targets: Targets<Name>): string {
  if (targets === NO_PLACE) return NO_PLACE;
  return elementsOf(targets)
    .map((element) => {
      const within = typeof targets === 'object' && targets[element] === WITHIN;
      return within ? `(\`${element}\`)` : `\`${element}\``;
    })
    .join('<br>');
}

const table = (headings: readonly string[], rows: readonly (readonly string[])[]): string =>
  [headings, headings.map(() => '---'), ...rows].map((cells) => `| ${cells.join(' | ')} |\n`).join('');
