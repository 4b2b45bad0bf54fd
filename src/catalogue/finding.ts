/** Where a finding points to; as much of it as is known. Rows and lines count from 1, as a spreadsheet shows them. */
export interface Place {
  file?: string;
  row?: number;
  line?: number;
  column?: string;
  /** Reference code or id of a component of the finding aid. */
  component?: string;
}

/** How much a finding matters, most first. Found while reading, `must` stops the work; the others never do. */
export const WEIGHTS = ['must', 'should', 'consider', 'caution'] as const;

export type Weight = (typeof WEIGHTS)[number];

/** Something found while reading or reviewing a catalogue, said so that its owner knows what to do. */
export interface Finding {
  /** Stable name of the rule, such as `list.no-title`. */
  rule: string;
  weight: Weight;
  place: Place;
  /** What was found, as a sentence. */
  found: string;
  /** What to do about it, as a sentence. */
  advice?: string;
  /** The standard or handbook the rule rests on. */
  source?: string;
}

/** Thrown where the work cannot go on; holds every problem found, not just the first. */
export class CatalogueError extends Error {
  readonly findings: readonly Finding[];

  constructor(findings: readonly Finding[]) {
    super(findings.map(sayFinding).join('\n'));
    this.name = 'CatalogueError';
    this.findings = findings;
  }
}

/** The place of a finding in words: `list.csv, row 14, column date`; the folder in which one is goes without saying. */
export function sayPlace({ file, row, line, column, component }: Place): string {
  return [
    file === '.' ? undefined : file,
    row === undefined ? undefined : `row ${row}`,
    line === undefined ? undefined : `line ${line}`,
    column === undefined ? undefined : `column ${column}`,
    component,
  ]
    .filter((part) => part !== undefined)
    .join(', ');
}

/** A finding as one line of text: the place, what was found, what to do. */
function sayFinding({ place, found, advice }: Finding): string {
  const where = sayPlace(place);
  return `${where === '' ? '' : `${where}: `}${found}${advice === undefined ? '' : ` ${advice}`}`;
}
