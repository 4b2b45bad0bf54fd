import type { Finding, Place } from '../catalogue/finding.ts';
import { forbiddenCharacter } from '../catalogue/text.ts';
import { columnLetters } from './column-letters.ts';
import type { Oddities, Row } from './csv-rows.ts';

/** A list that ends above the row in which its headings are to stand. */
export function noSuchRow(file: string): Finding {
  const found = 'The list has no such row as the one in which collection.yaml says its headings stand.';
  const advice = 'Mend “headings” under “list”: the number of the row, as a spreadsheet shows it.';
  return { rule: 'list.no-heading-row', weight: 'must', place: { file }, found, advice };
}

/** What was odd in the rows of a text; `linesBefore` stand before it in its file. */
export function sayOddities(
  { stray, unclosed }: Oddities,
  text: string,
  linesBefore: number,
  file: string,
): Finding[] {
  const findings = stray.map((row) => strayText({ file, row }));
  if (unclosed === undefined) return findings;
  const line = text.slice(0, unclosed.at).split(/\r\n|\r|\n/).length + linesBefore;
  return [...findings, openQuote({ file, row: unclosed.row, line })];
}

function openQuote(place: Place): Finding {
  return {
    rule: 'list.unclosed-quote',
    weight: 'must',
    place,
    found: 'A quotation mark (") opens a cell here, and none closes it before the file ends.',
    advice: 'Put one at the end of that cell; where a cell itself holds a quotation mark, write it twice.',
  };
}

function strayText(place: Place): Finding {
  return {
    rule: 'list.stray-quote',
    weight: 'should',
    place,
    found: 'Text follows the quotation mark (") that closes a cell; both were read as one cell.',
    advice: 'Put the whole cell between quotation marks, and write every quotation mark inside it twice.',
  };
}

/** A list in which there is nothing at all. */
export function empty(file: string): Finding {
  const advice =
    'Write the headings in its first row (title is the one that must be there) and one thing a row below.';
  return { rule: 'list.empty', weight: 'must', place: { file }, found: 'The list is empty.', advice };
}

/** What XML cannot hold, cell by cell. */
export function forbidden(rows: Iterable<Row>, headings: readonly string[], file: string): Finding[] {
  return [...rows].flatMap(({ row, cells }) =>
    cells.flatMap((cell, at): Finding[] => {
      const character = forbiddenCharacter(cell);
      if (character === undefined) return [];
      const code = character.codePoint.toString(16).toUpperCase().padStart(4, '0');
      const before = cell.slice(0, character.at).slice(-30);
      const where = before === '' ? 'begins with' : `holds, after “${before}”,`;
      const column = headings[at] || columnLetters(at);
      const found = `The cell ${where} the control character U+${code}, which no XML document can hold.`;
      const advice = 'Delete it in the list: it is invisible, so retype the words around it.';
      return [
        { rule: 'list.forbidden-character', weight: 'must', place: { file, row, column }, found, advice },
      ];
    }),
  );
}
