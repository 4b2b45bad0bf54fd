import type { Container } from './component.ts';

/** A container in words: box 3, folders 4-6. */
export const sayContainer = ({ type, number }: Container): string =>
  `${type}${/^\d+-\d+$/.test(number) ? 's' : ''} ${number}`;
