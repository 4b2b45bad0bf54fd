import type { DateStatement } from '../../catalogue/component.ts';
import { once } from '../../catalogue/once.ts';
import { displayDate, normalDate, readDate, structuredDate } from '../../dates/index.ts';
import { elementsOf, type Found } from './found.ts';
import { words } from './text.ts';

/** YYYY, YYYY-MM, YYYY-MM-DD, and without hyphens, as both versions of EAD let a date be written for machines. */
const STANDARD = /^(\d{4})(?:-?(\d\d)(?:-?(\d\d))?)?$/;

/** Elements that tell a date of the unit. */
export const DATES: ReadonlySet<string> = new Set(['unitdate', 'unitdatestructured']);

/**
 * The dates among the children of a `did`: words and structure that tell the same date are one statement. Units of the
 * same date share one list, which a writer then has to write only once.
 */
export function dates(elements: readonly Found[]): DateStatement[] {
  const found = statements(elements);
  const [only] = found;
  if (only === undefined || found.length > 1) return found;
  const key = `${only.type} ${only.edtf ?? ''} ${only.expression}`;
  const before = SHARED.get(key);
  if (before !== undefined) return before;
  if (SHARED.size > MOST_SHARED) SHARED.clear();
  SHARED.set(key, found);
  return found;
}

const SHARED = new Map<string, DateStatement[]>();
const MOST_SHARED = 10_000;

function statements(elements: readonly Found[]): DateStatement[] {
  const found: DateStatement[] = [];
  let inWords: { type: DateStatement['type']; expression: string } | undefined;
  for (const element of elements) {
    const statement = element.name === 'unitdate' ? unitDate(element) : structured(element, inWords);
    if (statement === undefined) continue;
    // The structure stands after the words that it takes apart.
    if (element.name === 'unitdatestructured' && inWords !== undefined) found.pop();
    found.push(statement);
    inWords = element.name === 'unitdate' && element.attributes.normal === undefined ? statement : undefined;
  }
  return found;
}

const typeOf = ({ attributes }: Found): DateStatement['type'] =>
  (attributes.unitdatetype ?? attributes.type) === 'bulk' ? 'bulk' : 'inclusive';

const MARKS: Readonly<Record<string, string>> = {
  ...{ approximate: '~', circa: '~', ca: '~', uncertain: '?', 'approximate-uncertain': '%' },
};

function unitDate(element: Found): DateStatement | undefined {
  const expression = words(element);
  if (expression === '') return undefined;
  const { normal, certainty } = element.attributes;
  const edtf = normal === undefined ? readWords(expression) : ofNormal(normal, certainty, expression);
  return { type: typeOf(element), expression, ...(edtf !== undefined && { edtf }) };
}

const readWords = once((expression: string): string | undefined => {
  const reading = readDate(expression.replace(/^bulk /i, ''), { whole: true });
  return reading.kind === 'date' ? reading.edtf : undefined;
});

const normalOf = once(normalDate);
const structureOf = once(structuredDate);

/** Of the readings that the words allow, the one that the attribute agrees with; else what the attribute says. */
function ofNormal(normal: string, certainty: string | undefined, expression: string): string | undefined {
  const ends = normal.trim().split('/').map(standard);
  const [from, to = from] = ends;
  if (from === undefined || to === undefined || ends.length > 2) return readWords(expression);
  const plain = from === to ? from : `${from}/${to}`;
  const read = readWords(expression);
  if (read !== undefined && normalOf(read) === plain && certaintyOf(read) === certainty) return read;
  const mark = MARKS[certainty ?? ''] ?? '';
  const edtf = mark === '' ? plain : plain.replace(/(?=\/)|$/g, mark);
  return normalOf(edtf) === undefined ? read : edtf;
}

const certaintyOf = (edtf: string) => (/[?~%]/.test(edtf) ? structureOf(edtf)?.certainty : undefined);

function standard(text: string): string | undefined {
  const [, year, month, day] = STANDARD.exec(text.trim()) ?? [];
  return year && [year, month, day].filter((part) => part !== undefined).join('-');
}

type InWords = { type: DateStatement['type']; expression: string } | undefined;

/** `unitdatestructured` of EAD3: one date, a range, or a set of both. What is told in the same way is worked out once. */
function structured(element: Found, inWords: InWords): DateStatement | undefined {
  const [part, ...more] = elementsOf(element);
  if (part?.name !== 'datesingle' || more.length > 0) return takenTogether(element, inWords);
  const { standarddate, notbefore, notafter } = part.attributes;
  const said = [typeOf(element), element.attributes.certainty, standarddate, notbefore, notafter];
  const key = [...said, inWords?.type, inWords?.expression, words(part)].join('\n');
  const before = SINGLE.get(key);
  if (before !== undefined) return before;
  if (SINGLE.size > MOST_SHARED) SINGLE.clear();
  const statement = takenTogether(element, inWords);
  if (statement !== undefined) SINGLE.set(key, statement);
  return statement;
}

const SINGLE = new Map<string, DateStatement>();

/** What the structure says together with the words before it. */
function takenTogether(element: Found, inWords: InWords): DateStatement | undefined {
  const parts = elementsOf(element).flatMap((part) => (part.name === 'dateset' ? elementsOf(part) : [part]));
  const said = parts.map(said1).filter((text) => text !== '');
  const members = parts.map(memberOf);
  const mark = MARKS[element.attributes.certainty ?? ''] ?? '';
  const type = typeOf(element);
  const shown = said.join(', ');
  const expression = inWords?.expression ?? (type === 'bulk' && shown !== '' ? `bulk ${shown}` : shown);
  if (expression === '') return undefined;
  const complete = members.filter((member) => member !== undefined);
  const whole = complete.length === members.length && members.length > 0;
  const attempts = [
    readWords(expression),
    whole && members.length === 1 ? complete[0]?.replace(/(?=\/(?!\.))|(?<!\.)$/g, mark) : undefined,
    whole && members.length > 1 ? `{${complete.join(',').replaceAll('/', '..')}}` : undefined,
  ].filter((edtf) => edtf !== undefined);
  const spans = whole ? spanOf(complete) : undefined;
  const edtf =
    attempts.find(
      (one) =>
        structureOf(one)?.certainty === element.attributes.certainty &&
        (spans === undefined || normalOf(one) === spans),
    ) ?? attempts.find((one) => structureOf(one) !== undefined);
  const display = inWords === undefined && edtf !== undefined && members.length > 0 && said.length === 0;
  return {
    type: inWords === undefined ? type : inWords.type,
    expression: display ? displayDate(edtf) : expression,
    ...(edtf !== undefined && { edtf }),
  };
}

/** The outer ends of the members, as normalDate writes them. */
function spanOf(members: readonly string[]): string | undefined {
  return members.length === 1 ? normalOf(members[0] ?? '') : undefined;
}

function said1(part: Found): string {
  if (part.name !== 'daterange') return words(part);
  return elementsOf(part).map(words).join('-');
}

function memberOf(part: Found): string | undefined {
  if (part.name === 'datesingle') return pointOf(part);
  const [from] = elementsOf(part, 'fromdate');
  const [to] = elementsOf(part, 'todate');
  const start = from === undefined ? '..' : pointOf(from);
  const end = to === undefined ? '..' : pointOf(to);
  return start === undefined || end === undefined ? undefined : `${start}/${end}`;
}

function pointOf(element: Found): string | undefined {
  const { standarddate, notbefore, notafter } = element.attributes;
  if (standarddate !== undefined) return standard(standarddate);
  if (notbefore !== undefined || notafter !== undefined) return undefined;
  return standard(words(element));
}
