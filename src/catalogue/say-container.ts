import type { Container } from './component.ts';
import { namesSeveral } from './containers.ts';

/** A container in words: box 3, folders 4-6. */
export const sayContainer = ({ type, number }: Container): string =>
  `${namesSeveral(number) ? pluralOf(type) : type} ${number}`;

/** Several containers of a type, which some write in the plural anyway: folders, boxes. */
export const pluralOf = (type: string): string =>
  /s$/i.test(type) ? type : `${type}${/x$/i.test(type) ? 'es' : 's'}`;

/** Numbers of folders or boxes, neighbours drawn together: `3-7, 9`. Numbers with letters in them are named one by one. */
export function numbersInWords(numbers: readonly string[]): string | undefined {
  const plain = new Set<number>();
  const others = new Set<string>();
  for (const number of numbers) {
    if (/^[1-9]\d{0,8}$/.test(number)) plain.add(Number(number));
    else others.add(number);
  }
  const runs: { first: number; last: number }[] = [];
  for (const number of [...plain].sort((one, other) => one - other)) {
    const run = runs.at(-1);
    if (run !== undefined && run.last === number - 1) run.last = number;
    else runs.push({ first: number, last: number });
  }
  const words = [
    ...runs.map(({ first, last }) => (first === last ? `${first}` : `${first}-${last}`)),
    ...others,
  ];
  return words.length === 0 ? undefined : words.join(', ');
}
