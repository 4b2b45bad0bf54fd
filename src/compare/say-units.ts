import { addTo } from '../catalogue/add-to.ts';
import type { Changed, MovedUnit, PlacedUnit, UnitName } from './model.ts';
import { sayFields } from './say-fields.ts';

/** So many units are named of which only the code or the shelf changed; the rest are counted. */
const NAMED = 20;

/** A unit by its reference code (both, where it was another before), title and dates. */
export function sayUnit({ referenceCode, title, dates }: UnitName, now?: UnitName): string {
  const code = now?.referenceCode ?? referenceCode;
  const codes = code === referenceCode || referenceCode === undefined ? code : `${referenceCode} → ${code}`;
  const name = [title, ...dates].join(', ');
  return (codes === undefined ? name : `${codes}  ${name}`).replace(/[\r\n\t]+/g, ' ');
}

/** Units that came or went, under the unit they stand in; what stood in one of them, set in below it. */
export function* sayPlaced(placed: readonly PlacedUnit[]): Generator<string> {
  const depths = new Map<string, number>();
  let above: string | undefined;
  for (const { unit, within } of placed) {
    const depth = within === undefined ? undefined : depths.get(within.id);
    depths.set(unit.id, (depth ?? 0) + 1);
    if (depth === undefined && within !== undefined && within.id !== above) {
      above = within.id;
      yield `in ${sayUnit(within)}:`;
    }
    yield `${'  '.repeat(depth ?? 0)}  ${sayUnit(unit)}`;
  }
}

/** Units that moved, those with one way in common together. */
export function* sayMoved(moved: readonly MovedUnit[]): Generator<string> {
  const ways = new Map<string, MovedUnit[]>();
  for (const one of moved) {
    const way = one.reordered
      ? `in another order in ${sayUnit(one.from, one.to)}:`
      : `from ${sayUnit(one.from)}\n  to ${sayUnit(one.to)}:`;
    addTo(ways, way, one);
  }
  for (const [way, some] of ways) {
    yield* way.split('\n');
    for (const { was, now } of some) yield `${way.includes('\n') ? '    ' : '  '}${sayUnit(was, now)}`;
  }
}

/** Units of which only the reference code or the place on the shelf changed, in a line each, and not all of them. */
export function* sayFollowing(changed: readonly Changed<UnitName>[]): Generator<string> {
  const shown = changed.length <= NAMED + 1 ? changed : changed.slice(0, NAMED);
  for (const { was, now, fields } of shown) {
    yield sayUnit(was, now);
    for (const line of sayFields(fields.filter(({ field }) => field !== 'referenceCode'))) yield `  ${line}`;
  }
  if (shown.length < changed.length) yield `… and ${changed.length - shown.length} more; --json shows all.`;
}
