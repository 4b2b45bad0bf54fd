import type { Finding } from '../catalogue/finding.ts';

import type { HousingSettings } from '../catalogue/housing-settings.ts';
import { BOXES } from './boxes.ts';
import { roomIn } from './fill-boxes.ts';
import { HOLDERS } from './holders.ts';
import type { Box, Holder } from './model.ts';
import { readName } from './names-of-stock.ts';
import { COMMON_BOXES } from './other-boxes.ts';
import { ownBox } from './own-box.ts';
import { LETTER_BOXES, METRIC_BOXES } from './paper-boxes.ts';
import { LETTER_FOLDERS, METRIC_FOLDERS } from './paper-folders.ts';
import { SLEEVES } from './sleeves.ts';
import { goesIntoNone, must, namedTwice, noFolder, unknownName } from './stock-findings.ts';

/** The folders, sleeves and boxes to use, and what is wrong with how they were named. */
export interface Stock {
  holders: readonly Holder[];
  boxes: readonly Box[];
  findings: Finding[];
}

/** Where paper is letter and legal. Unicode CLDR, supplemental data, paperSize US-Letter; from memory. */
const LETTER_COUNTRIES = new Set('BZ CA CL CO CR GT MX NI PA PH PR SV US VE'.split(' '));

/**
 * What `collection.yaml` says there is or may be bought. What is named takes the place of everything that would serve
 * for the same; for what nothing is named, the usual folders and boxes of the country are taken: letter and legal, or
 * else A4 and foolscap. Folders that would go into none of the boxes are left out; a named one is a finding.
 * @param country two letters of ISO 3166, where known
 */
export function stockFrom(settings: HousingSettings, country?: string): Stock {
  const usesLetter = LETTER_COUNTRIES.has(country ?? '');
  const findings: Finding[] = [];
  const own = settings.own.flatMap((one) => {
    const made = ownBox(one);
    if ('box' in made) return [made.box];
    findings.push(...made.troubles.map(({ rule, ...said }) => must(rule, said.found, said.advice)));
    return [];
  });
  findings.push(...namedTwice(settings.own.map(({ name }) => name)));
  // A name of one's own may stand in the list as well.
  const namedBoxes = pick('box', settings.boxes, [...own, ...BOXES], findings);
  const namedHolders = pick('folder', settings.folders, HOLDERS, findings);
  const boxes = completed(
    [...new Set([...own, ...namedBoxes])],
    [...(usesLetter ? LETTER_BOXES : METRIC_BOXES), ...COMMON_BOXES],
  );
  const usual = [...(usesLetter ? LETTER_FOLDERS : METRIC_FOLDERS), ...SLEEVES];
  const holders = [
    ...namedHolders,
    ...usual.filter((row) => !namedHolders.some((named) => serves(named, row))),
  ]
    .map((holder) => limited(holder, settings.thickness))
    .filter((holder) => holder.type !== 'folder' || boxes.some((box) => goesInto(box, holder)));
  for (const holder of namedHolders) {
    if (!holders.some(({ id }) => id === holder.id)) findings.push(goesIntoNone(holder));
  }
  if (findings.length === 0 && !holders.some(isPaperFolder))
    findings.push(noFolder([...namedHolders, ...usual].find(isPaperFolder)));
  return { holders, boxes, findings };
}

/** Whether a holder is a folder that stands among the papers. */
export const isPaperFolder = ({ type, shelf }: Holder): boolean => type === 'folder' && shelf === 'papers';

function pick<Row extends Holder | Box>(
  what: 'box' | 'folder',
  names: readonly string[],
  rows: readonly Row[],
  findings: Finding[],
): Row[] {
  const picked = new Set<Row>();
  for (const name of names) {
    const read = readName(name, rows);
    if ('row' in read) picked.add(read.row);
    else findings.push(unknownName(what, name, read.meant, rows));
  }
  return [...picked];
}

/** Named boxes, and usual ones for the shelves that none of those named serves. */
function completed(named: readonly Box[], usual: readonly Box[]): Box[] {
  const served = new Set(named.flatMap(({ takes }) => takes));
  const rest = usual.map((box) => ({ ...box, takes: box.takes.filter((shelf) => !served.has(shelf)) }));
  return [...named, ...rest.filter(({ takes }) => takes.length > 0)];
}

/** Whether one holder stands for another of the same use. */
const serves = (named: Holder, row: Holder) =>
  (named.type === 'folder') === (row.type === 'folder') &&
  named.shelf === row.shelf &&
  named.takes.some((form) => row.takes.includes(form));

// How thick a folder may grow is said of those that stand among papers; a large one lies flat, and stays thin.
const limited = (holder: Holder, limit: number | undefined): Holder =>
  limit === undefined || !isPaperFolder(holder) ? holder : { ...holder, limit };

const goesInto = (box: Box, { shelf, outside, wall }: Holder) =>
  roomIn(box, [], { shelf, outside, thickness: wall });
