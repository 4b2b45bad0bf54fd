import type { Catalogue } from './catalogue.ts';
import type { Finding } from './finding.ts';
import { LIST_FILE } from './load-findings.ts';

/** What tells where in a list a finding is. */
type Where = Pick<Catalogue, 'listFile' | 'sheets' | 'things'>;

/**
 * Findings of the rules, which say `list.csv` of every list, with the name of the list that there is; and of its sheet,
 * where things stand in that row of one sheet alone.
 */
export function inList(findings: readonly Finding[], { listFile, sheets, things }: Where): Finding[] {
  if (listFile === LIST_FILE) return [...findings];
  let from = 0;
  const rows = sheets.map(({ file, things: count }) => {
    const here = things.slice(from, from + count);
    from += count;
    return { file, rows: new Set(here.map(({ row }) => row)) };
  });
  const fileOf = (row: number | undefined) => {
    const there = row === undefined ? [] : rows.filter((sheet) => sheet.rows.has(row));
    return there.length === 0 ? listFile : there.map(({ file }) => file).join(' or ');
  };
  return findings.map((finding) =>
    finding.place.file === LIST_FILE
      ? { ...finding, place: { ...finding.place, file: fileOf(finding.place.row) } }
      : finding,
  );
}
