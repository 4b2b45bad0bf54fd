import { folderTitle } from '../arrange/devised-titles.ts';
import type { Component, DateStatement } from '../catalogue/component.ts';
import { bulkDates, displayDate, inclusiveDatesWithGaps } from '../dates/index.ts';
import { sayExtent } from '../housing/extent.ts';
import { extentsOf } from '../kinds/extents.ts';
import { countsOf, extentsLeft, leaves } from './recount.ts';

/**
 * A unit of which something went, stated anew from what is left, so that no sum tells of what is missing.
 * @param whole the same unit with everything below it
 */
export function restated(left: Component, whole: Component): Component {
  return {
    ...left,
    title: titleOf(left, whole),
    dates: datesOf(left, whole),
    extents: extentsLeft(left, whole),
    scopeAndContent: summaryOf(left, whole),
    arrangement: arrangementOf(left, whole),
    // A pointer to what lies apart, made from all things of a folder.
    physicalLocation: undefined,
    physicalDescription: undefined,
    // The whole as it was found elsewhere.
    kept: undefined,
  };
}

/** Dates stay as they are where what went had no part in them; else they are those of what is left. */
function datesOf(left: Component, whole: Component): DateStatement[] {
  if (!whole.dates.some(({ edtf }) => edtf !== undefined)) return whole.dates;
  const [piecesLeft, pieces] = [piecesByDate(left), piecesByDate(whole)];
  const edtf = inclusiveDatesWithGaps(piecesLeft.keys());
  const isSame = edtf !== undefined && edtf === inclusiveDatesWithGaps(pieces.keys());
  const bulk = bulkDates(piecesLeft);
  if (isSame && bulk === bulkDates(pieces)) return whole.dates;
  const inclusive: DateStatement[] = isSame
    ? whole.dates.filter(({ type }) => type === 'inclusive')
    : [edtf === undefined ? UNDATED : { type: 'inclusive', expression: displayDate(edtf), edtf }];
  return bulk === undefined
    ? inclusive
    : [...inclusive, { type: 'bulk', expression: `bulk ${displayDate(bulk)}`, edtf: bulk }];
}

// DACS 2.4.16.
const UNDATED: DateStatement = { type: 'inclusive', expression: 'undated' };

function piecesByDate(unit: Component): Map<string, number> {
  const pieces = new Map<string, number>();
  for (const { dates, extents } of leaves(unit)) {
    const number = extents.find(({ type }) => type === 'materialtype')?.quantity ?? 1;
    for (const { type, edtf } of dates)
      if (type === 'inclusive' && edtf !== undefined) pieces.set(edtf, (pieces.get(edtf) ?? 0) + number);
  }
  return pieces;
}

/** A title that names the kinds in a folder (DACS 2.3.18) names those that are left. */
function titleOf(left: Component, whole: Component): string {
  const [now, before] = [natureOf(left), natureOf(whole)];
  if (now === undefined || before === undefined || now === before || whole.level !== 'file')
    return whole.title;
  const [beginning, inside] = [before, `: ${before.charAt(0).toLowerCase()}${before.slice(1)}`];
  if (whole.title.startsWith(beginning)) return now + whole.title.slice(beginning.length);
  const at = whole.title.indexOf(inside);
  if (at < 0) return whole.title;
  return `${whole.title.slice(0, at)}: ${now.charAt(0).toLowerCase()}${now.slice(1)}${whole.title.slice(at + inside.length)}`;
}

function natureOf(unit: Component): string | undefined {
  const counts = countsOf(unit);
  const nature = counts === undefined ? '' : folderTitle({ label: undefined }, 'group', counts, '');
  return nature === '' ? undefined : nature;
}

const COUNTED = 'This summary was counted from the list of the collection.';

/** A summary that nobody wrote but that was counted is counted again. */
function summaryOf(left: Component, { scopeAndContent: said }: Component): string | undefined {
  if (said?.endsWith(COUNTED) !== true) return said;
  const counts = countsOf(left);
  if (counts === undefined || counts.length === 0) return undefined;
  const kinds = sayExtent(extentsOf(counts.slice(0, 8)));
  return `The collection holds ${kinds}${counts.length > 8 ? ', and other kinds' : ''}. ${COUNTED}`;
}

/** An arrangement that says in how many series it is, says how many are left. */
const arrangementOf = (left: Component, { arrangement, children }: Component): string | undefined =>
  left.children.length === children.length
    ? arrangement
    : arrangement?.replace(`, in ${children.length} series,`, `, in ${left.children.length} series,`);
