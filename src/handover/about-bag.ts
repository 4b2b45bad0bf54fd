import type { Settings } from '../catalogue/settings.ts';
import { sayTotals } from './inventory-papers.ts';
import { SOFTWARE } from './software.ts';
import type { Summary } from './summary.ts';

/**
 * What `bag-info.txt` says of a package, by the labels that RFC 8493, 2.2.2, reserves, and what made it: that section
 * allows further labels.
 * @param today YYYY-MM-DD
 */
export function aboutBag(summary: Summary, settings: Settings, today: string): [string, string][] {
  const { title, code, giver, author, abstract, dates, rows, copies } = summary;
  const totals = sayTotals(rows, copies.filter(({ name }) => name !== undefined).length);
  const what = `${title}${dates === '' ? '' : `, ${dates}`}: ${totals}.`;
  return [
    ['Source-Organization', giver.name],
    ['Organization-Address', (giver.address ?? []).join(', ')],
    ['Contact-Name', author ?? ''],
    ['External-Description', abstract === undefined ? what : `${what} ${abstract}`],
    ['Bagging-Date', today],
    ['Bag-Software-Agent', SOFTWARE],
    ['External-Identifier', code],
    ['Internal-Sender-Identifier', settings.prefix],
    [
      'Internal-Sender-Description',
      'Finding aid, list, inventory, digital copies and papers of a transfer. Begin with data/READ-ME-FIRST.txt.',
    ],
  ];
}
