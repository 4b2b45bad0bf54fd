import type { Finding, Weight } from '../catalogue/finding.ts';
import { sayMoreRows } from '../catalogue/say-count.ts';
import type { Thing } from '../catalogue/thing.ts';
import type { CopyFacts } from '../copies/facts.ts';

/** A digital copy that the list names, with the things whose rows name it. */
export interface Copy {
  path: string;
  things: readonly Thing[];
  /** Left out where the file was not looked at. */
  facts?: CopyFacts;
}

/** One place where a rule of this family finds something. */
export interface Case {
  path: string;
  /** The first row that names the copy, and how many do; none for a file that is not in the list. */
  row?: number;
  rows?: number;
  /** What is particular to this case, as the rule needs it for its sentence. */
  what?: string;
  /** What to do in this case, where the rule has nothing better for all. */
  advice?: string;
}

/** A rule on digital copies, with its words for one case and for many. */
export interface CopyRule {
  rule: string;
  weight: Weight;
  /** A sentence; `name` is the path in quotation marks, with the number of further rows. */
  one: (name: string, what: string) => string;
  /** The beginning of a sentence that the first few names end. */
  many: (count: number) => string;
  advice: string;
  source: string;
}

/** So many findings of one rule are said singly; more of them would bury everything else. */
const SINGLY = 10;
const FIRST_FEW = 5;

/** Says each case of a rule, or all of them in one finding where they are many. */
export function say(rule: CopyRule, cases: readonly Case[]): Finding[] {
  const { rule: name, weight, source, advice } = rule;
  if (cases.length <= SINGLY) {
    return cases.map((one) => ({
      ...{ rule: name, weight },
      place: one.row === undefined ? { file: one.path } : { file: 'list.csv', row: one.row, column: 'copy' },
      found: rule.one(`“${one.path}”${sayMoreRows(one.rows ?? 1)}`, one.what ?? ''),
      ...{ advice: one.advice ?? advice, source },
    }));
  }
  const first = cases.slice(0, FIRST_FEW).map(nameAndRow).join(', ');
  const isListed = cases.some(({ row }) => row !== undefined);
  return [
    {
      ...{ rule: name, weight },
      place: isListed ? { file: 'list.csv', column: 'copy' } : {},
      found: `${rule.many(cases.length)}: ${first} and ${cases.length - FIRST_FEW} more.`,
      ...{ advice, source },
    },
  ];
}

/** The case of a copy of the list. */
export function caseOf({ path, things }: Copy, particulars: Pick<Case, 'what' | 'advice'> = {}): Case {
  const row = things[0]?.row;
  return { path, ...(row !== undefined && { row }), rows: things.length, ...particulars };
}

const nameAndRow = ({ path, row, what }: Case) => {
  const beside = [row === undefined ? '' : `row ${row}`, what ?? ''].filter((part) => part !== '');
  return `“${path}”${beside.length === 0 ? '' : ` (${beside.join(': ')})`}`;
};
