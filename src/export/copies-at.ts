import type { FindingAid } from '../catalogue/finding-aid.ts';
import { withUnits } from '../catalogue/units.ts';
import { isPath } from '../copies/index.ts';

/**
 * The same finding aid with every digital copy under the address at which its reader finds it. An address on the web
 * stays as it is; parts without a copy are shared.
 */
export const withCopiesAt = (aid: FindingAid, address: (file: string) => string): FindingAid =>
  withUnits(aid, (unit) => {
    if (unit.digitalCopies.length === 0) return unit;
    const digitalCopies = unit.digitalCopies.map((copy) =>
      isPath(copy.file) ? { ...copy, file: address(copy.file) } : copy,
    );
    return { ...unit, digitalCopies };
  });
