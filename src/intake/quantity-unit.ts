import { BETWEEN, HOLDERS, LEAVES, MULTIPLES, NUMBER_WORDS, THINGS, VOLUMES } from './quantity-words.ts';

// 12, or 1,200 with any mark between the thousands; no part of a decimal, a fraction or a longer number.
const FIGURES = /^(?:\d{1,3}(?:[,.'’\s]\d{3}){1,2}|\d{1,9})(?![\d½¼¾]|[.,/]\d)/;
const WORD = /^[a-z]+(?:[- ](?:one|two|three|four|five|six|seven|eight|nine)\b)?/;

/** A number at the beginning of a phrase, in figures or words, and what follows it; undefined where there is none. */
export function amountIn(text: string): { number: number; rest: string } | undefined {
  const half = /^half an? (?=dozen)/.exec(text)?.[0];
  const figures = FIGURES.exec(text)?.[0];
  const word = [WORD.exec(text)?.[0], /^[a-z]+/.exec(text)?.[0]].find((one) => NUMBER_WORDS.has(one ?? ''));
  const first = half ?? figures ?? word ?? /^an? /.exec(text)?.[0] ?? '';
  const after = text.slice(first.length).trimStart();
  const stands = half ? 0.5 : figures ? Number(figures.replace(/\D/g, '')) : NUMBER_WORDS.get(word ?? '');
  const many = /^[a-z]+/.exec(after)?.[0] ?? '';
  const times = MULTIPLES.get(many);
  if (times === undefined) return stands === undefined ? undefined : { number: stands, rest: after };
  // "dozens" and "hundreds" alone are no numbers.
  if (stands === undefined && many === 'dozens') return undefined;
  return { number: (stands ?? 1) * times, rest: after.slice(many.length).trimStart() };
}

/**
 * What is counted, from the words behind a number, in the singular: of "small reels" the reel. Undefined where nothing
 * stands there, blank where it is more than a unit.
 */
export function unitIn(rest: string): string | undefined {
  if (rest === '') return undefined;
  const words = rest.replace(/\.$/, '').split(' ');
  const last = words.pop() ?? '';
  return words.every((word) => BETWEEN.has(word)) ? singular(last) : '';
}

const singular = (word: string): string =>
  word === 'leaves'
    ? 'leaf'
    : word
        .replace(/ies$/, 'y')
        .replace(/(x|ch|sh)es$/, '$1')
        .replace(/(?<=..)(?<!s)s$/, '');

/** Whether so many of a unit are so many things of a kind; a blank kind may be anything. */
export function isCounted(unit: string, kind: string): boolean {
  if (unit === '') return false;
  if (names(kind, unit)) return true;
  if (HOLDERS.has(unit)) return !LEAVES.test(kind) || isVolume(kind);
  return THINGS.has(unit);
}

/** Whether a kind is that of volumes or the like, so that what is in one of them is not what is counted. */
export const isVolume = (kind: string): boolean => VOLUMES.test(kind);

/** Whether the kind is called by that unit: "photograph album" by "album". */
export const names = (kind: string, unit: string): boolean =>
  kind.split(/[^\p{L}\p{N}]+/u).some((word) => word.startsWith(unit));
