import { isDeepStrictEqual } from 'node:util';
import { COUNTED_SCOPE, scopeFromCounts } from '../arrange/stand-ins.ts';
import { addPieces, datesOfPieces, type PiecesByDate, UNDATED } from '../arrange/statements-of-date.ts';
import type { Component, DateStatement } from '../catalogue/component.ts';
import { extentsLeft, leaves } from './recount.ts';
import { retitled } from './retitle.ts';
import { sumByKind } from './sum-by-kind.ts';

/**
 * A unit of which something went, stated anew from what is left, so that no sum tells of what is missing.
 * @param whole the same unit with everything below it
 */
export function restated(left: Component, whole: Component): Component {
  return {
    ...left,
    title: retitled(left, whole),
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
  const [now, before] = [datesOfPieces(piecesByDate(left)), datesOfPieces(piecesByDate(whole))];
  if (now === undefined) return [UNDATED];
  if (isDeepStrictEqual(now, before)) return whole.dates;
  const [inclusive, ...bulk] = now;
  return inclusive?.edtf === before?.[0]?.edtf
    ? [...whole.dates.filter(({ type }) => type === 'inclusive'), ...bulk]
    : now;
}

function piecesByDate(unit: Component): PiecesByDate {
  const pieces: PiecesByDate = new Map();
  for (const { dates, extents } of leaves(unit)) {
    const number = extents.find(({ type }) => type === 'materialtype')?.quantity;
    for (const { type, edtf } of dates) if (type === 'inclusive') addPieces(pieces, edtf, number);
  }
  return pieces;
}

/** A summary that nobody wrote but that was counted is counted again. */
function summaryOf(left: Component, { scopeAndContent: said }: Component): string | undefined {
  if (said?.endsWith(COUNTED_SCOPE) !== true) return said;
  const counts = sumByKind(left);
  return counts.length === 0 ? undefined : scopeFromCounts(counts);
}

/** An arrangement that says in how many series it is, says how many are left. */
const arrangementOf = (left: Component, { arrangement, children }: Component): string | undefined =>
  left.children.length === children.length
    ? arrangement
    : arrangement?.replace(`, in ${children.length} series,`, `, in ${left.children.length} series,`);
