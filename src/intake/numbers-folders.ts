import type { Finding } from '../catalogue/finding.ts';
import { foldersText } from '../catalogue/numbers-file.ts';
import type { Keyed } from './numbers-agree.ts';
import { foldersShared, type Said } from './numbers-findings.ts';

/** The numbers of folders run through the collection: no two places share one. */
export function sharedFolders(rows: readonly Keyed[], file: string): Finding[] {
  const spans = new Map<string, Keyed>();
  for (const row of rows) {
    if (row.settled.folder === undefined) continue;
    const key = `${row.folder} ${foldersText(row.settled)}`;
    if (!spans.has(key)) spans.set(key, row);
  }
  const first = ({ settled }: Keyed) => settled.folder ?? 0;
  const last = ({ settled }: Keyed) => settled.lastFolder ?? settled.folder ?? 0;
  const said = (row: Keyed): Said => ({ row: row.row, value: row.folder });
  const findings: Finding[] = [];
  let reaching: Keyed | undefined;
  for (const span of [...spans.values()].sort((a, b) => first(a) - first(b))) {
    if (reaching !== undefined && first(span) <= last(reaching) && span.folder !== reaching.folder) {
      const [one, other] = span.row < reaching.row ? [span, reaching] : [reaching, span];
      findings.push(foldersShared(file, first(span), said(other), said(one)));
    }
    if (reaching === undefined || last(span) > last(reaching)) reaching = span;
  }
  return findings;
}
