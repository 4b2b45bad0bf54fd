import type { Settings } from '../catalogue/settings.ts';

/** The reference code of a unit, and the id made from it: `QF/2/5/13` and `QF-2-5-13`. */
export interface UnitCode {
  referenceCode: string;
  id: string;
}

/**
 * Gives codes by place: the prefix (the recipient's, if there is one), then the number of each unit within the one
 * above, from 1. ISAD(G) 3.1.1. The id holds the same numbers, so that it stays as long as the code does.
 */
export function codesFor(settings: Pick<Settings, 'prefix' | 'separator' | 'recipient'>) {
  const { separator } = settings;
  const prefix = settings.recipient?.prefix ?? settings.prefix;
  const plain = prefix.normalize('NFKD').replace(/[^A-Za-z0-9_]+/g, '_');
  const root = /^[A-Za-z_]/.test(plain) ? plain : `c${plain}`;
  const top: UnitCode = { referenceCode: prefix, id: root };
  return {
    top,
    below: (above: UnitCode, number: number): UnitCode => ({
      referenceCode: `${above.referenceCode}${separator}${number}`,
      id: `${above.id}-${number}`,
    }),
  };
}

/** The reference code of a settled place, such as 2/5/13. */
export function referenceCodes(
  settings: Parameters<typeof codesFor>[0],
): (place: readonly number[]) => string {
  const { top, below } = codesFor(settings);
  return (place) => place.reduce(below, top).referenceCode;
}
