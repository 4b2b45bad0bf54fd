import type { Finding } from '../catalogue/finding.ts';
import { once } from '../catalogue/once.ts';
import type { Thing } from '../catalogue/thing.ts';
import { noQuantity } from './list-findings.ts';
import { readQuantity } from './quantity.ts';

/**
 * A reader of the cells that say how many there are.
 * @param file its name, for the messages
 * @param findings to which is added what is to be said of them
 * @returns a function that notes a quantity in its thing, and tells whether the cell says more than a number can
 */
export function quantityReader(file: string, findings: Finding[]): (thing: Thing, cell: string) => boolean {
  const quantities = once((kind: string) => once((cell: string) => readQuantity(cell, kind)));
  return (thing, cell) => {
    const counted = quantities(thing.kind ?? '')(cell);
    if (counted === undefined) {
      findings.push(noQuantity(file, thing.row, cell));
      thing.quantityUnread = true;
      return true;
    }
    const { quantity, approximate, sheets } = counted;
    if (quantity !== undefined) thing.quantity = quantity;
    if (quantity !== undefined && approximate) thing.quantityApproximate = true;
    if (sheets !== undefined) thing.sheets = sheets;
    return sheets !== undefined;
  };
}
