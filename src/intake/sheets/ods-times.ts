import { attribute } from './scan-xml.ts';

/** How many columns, rows or cells an attribute says that an element stands for or spans; one, where it says none. */
export function times(attributes: string, name: string): number {
  const number = Number(attribute(attributes, name) ?? 1);
  return Number.isInteger(number) && number > 0 ? number : 1;
}
