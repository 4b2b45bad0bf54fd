import { FILM_WIDTHS, MEDIA_SIZES } from './media-sizes.ts';
import type { Form } from './model.ts';
import { PHOTOGRAPH_SIZES } from './photograph-sizes.ts';
import { BEDS } from './size-beds.ts';
import { ISO_PAPER, PAPER, type SizeName } from './size-names.ts';
import type { SizeToken } from './size-tokens.ts';
import { FILLERS, VAGUE } from './size-units.ts';

/** A name found in a phrase. */
export interface Named {
  /** As it is known, not as it was written. */
  name: string;
  row: SizeName;
}

const FILM: readonly SizeName[] = FILM_WIDTHS.filter(({ names }) => names.length > 0).map(
  ({ names, source }) => ({ names, form: 'film', loose: true, source }),
);

/** All sizes that have names. */
export const SIZE_NAMES: readonly SizeName[] = [
  ...ISO_PAPER,
  ...PAPER,
  ...PHOTOGRAPH_SIZES,
  ...MEDIA_SIZES,
  ...FILM,
  ...BEDS,
];

const known = new Map<string, Named>();
for (const row of SIZE_NAMES) for (const name of row.names) known.set(name, { name, row });
const MOST_WORDS = Math.max(...[...known.keys()].map((name) => name.split(' ').length));
const FIGURES = /^\d+s?$/;

/**
 * The names in a phrase, and the tokens that are no part of them ("120" in "120 film" is no measure). A name counts
 * only where it is all that its part of the phrase says: "larger than a postcard" is no postcard.
 * @param form what the thing is known to be
 */
export function namesIn(
  tokens: readonly SizeToken[],
  form: Form | undefined,
): { names: Named[]; left: SizeToken[] } {
  const names: Named[] = [];
  const left: SizeToken[] = [];
  for (const part of partsOf(tokens)) {
    const withNumbers = part.some(({ is }) => is === 'cross')
      ? undefined
      : segment(part.flatMap(wordsOf), form);
    const fits = withNumbers?.some(({ name, row }) => isFor(name, row, form));
    const found = fits ? withNumbers : segment(part.flatMap(wordsOnly), form);
    names.push(...(found ?? []));
    left.push(
      ...(fits ? part.filter((token) => token.is !== 'number' || wordsOf(token).length === 0) : part),
    );
  }
  return { names, left };
}

/** "78" alone is a record, unless the thing is known to be none; a "recording" may be either. */
const isFor = (name: string, row: SizeName, form: Form | undefined) => {
  if (!FIGURES.test(name)) return true;
  // "127" is film only where negatives are meant.
  if (row.form === 'negative') return form === 'negative';
  return form === undefined || form === 'tape' || form === row.form;
};

/** A phrase parted where it pauses; what parts it begins the part that follows. */
function partsOf(tokens: readonly SizeToken[]): SizeToken[][] {
  const parts: SizeToken[][] = [[]];
  for (const token of tokens) {
    if (token.is === 'break' || token.is === 'range') parts.push([token]);
    else parts.at(-1)?.push(token);
  }
  return parts;
}

function wordsOf(token: SizeToken): string[] {
  if (token.is !== 'number') return wordsOnly(token);
  if (token.unit === undefined) return [token.text];
  return token.unit === 1 ? [token.text, 'mm'] : [];
}

const wordsOnly = (token: SizeToken): string[] =>
  token.is === 'word' || token.is === 'label' ? [token.word] : [];

/** The names that a run of words consists of, the longest first; undefined where a word belongs to none. */
function segment(words: readonly string[], form: Form | undefined): Named[] | undefined {
  const names: Named[] = [];
  let at = 0;
  while (at < words.length) {
    let length = Math.min(MOST_WORDS, words.length - at);
    let named: Named | undefined;
    for (; length > 0; length--) {
      const name = words.slice(at, at + length).join(' ');
      named = meaning(name, form) ?? known.get(name);
      if (named !== undefined) break;
    }
    if (named !== undefined) names.push(named);
    else if (!FILLERS.has(words[at] ?? '') && !VAGUE.has(words[at] ?? '')) return undefined;
    at += Math.max(1, length);
  }
  return names;
}

/** Of a photograph, "imperial" is the mount and not the sheet of paper; of a quilt, "double" is the bed. */
function meaning(name: string, form: Form | undefined): Named | undefined {
  if (form === 'photograph' || form === 'mounted') return known.get(`${name} card`);
  return form === 'textile' ? known.get(`${name} bed`) : undefined;
}

/** The name that a size is taken from; undefined where none has a size. */
export function bestOf(names: readonly Named[]): Named | undefined {
  const sized = names.filter(({ row }) => row.face !== undefined);
  // What has one size says more than what has several, and "78" or "cabinet card" more than "large". Of "A5 and A4",
  // the larger covers both.
  const exact = sized.filter(({ row }) => !row.loose);
  return largest(exact) ?? sized.find(({ row }) => row.form !== undefined) ?? largest(sized);
}

const areaOf = ({ row: { face } }: Named) => (face?.long ?? 0) * (face?.short ?? 0);
const largest = (names: readonly Named[]) => [...names].sort((a, b) => areaOf(b) - areaOf(a))[0];
