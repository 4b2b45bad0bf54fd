import { readKind } from '../arrange/index.ts';
import { once } from '../catalogue/once.ts';
import type { Thing } from '../catalogue/thing.ts';
import { bounds } from '../dates/index.ts';
import type { HazardName } from './danger-hazards.ts';
import { hasNegatives } from './danger-negatives.ts';
import { type Material, materialOf, materialSaid } from './material.ts';

/** The first and the last year of film on cellulose nitrate, as far as a family's things go. From memory: into the early 1950s. */
const NITRATE_YEARS = { first: '1889', last: '1953' };
/** The last year in which film on acetate is to be expected, save for slides. From memory. */
const LAST_ACETATE_YEAR = '1990';

// From memory: these widths were never made on nitrate for families.
const SAFE_WIDTH = /\b(?:16|9[.,]5|8)[ -]?mm\b|\b(?:super|standard|regular|double)[ -]?8\b/iu;
const SAFETY = /(?<!\b(?:no|not|without) )\bsafety\b/iu;
const LATER_COPY = /\b(?:dvd|vhs|video|digital|memory stick)\b/iu;
const OTHER_REEL = /\b(?:fishing|cotton|thread|yarn|cable|sewing)\b/iu;
const GLASS = /\bglass\b/iu;

type Sort = 'reel' | 'negatives' | 'glass';

const SORT_OF_KIND: Partial<Record<string, Sort>> = {
  'film reel': 'reel',
  negative: 'negatives',
  'glass plate': 'glass',
  ambrotype: 'glass',
  daguerreotype: 'glass',
};

const GLASS_WORDS =
  /\b(?:ambrotypes?|daguerreotypes?|lantern slides?|glass (?:plates?|negatives?|slides?))\b/iu;
const REELS = /\b(?:film reels?|reels? of (?:old )?films?|cine films?|home movies?|movie reels?)\b/iu;

const sortOfKind = once((written: string): { sort: Sort | undefined; material: Material } | undefined => {
  const kind = readKind(written)?.kind;
  if (kind === undefined) return undefined;
  return {
    sort: GLASS_WORDS.test(written) ? 'glass' : SORT_OF_KIND[kind.one],
    material: materialOf(written),
  };
});

function sortOf(thing: Thing): Sort | undefined {
  const { kind, title, size, description } = thing;
  const known = kind === undefined ? undefined : sortOfKind(kind);
  if (known?.sort === 'reel') return OTHER_REEL.test(title) ? undefined : 'reel';
  if (known?.sort === 'glass') return 'glass';
  if (known === undefined) {
    // Nobody noted a kind that is known, so the title has to tell.
    if (GLASS_WORDS.test(title)) return 'glass';
    if (REELS.test(title)) return 'reel';
  }
  const material = known?.material ?? materialSaid(title);
  if (known?.sort !== 'negatives' && (material === 'digital' || !hasNegatives(thing, material === 'paper')))
    return undefined;
  return [title, size, description].some(says(GLASS)) ? 'glass' : 'negatives';
}

/** Whether a thing is, or holds, negatives on film. */
export const isNegatives = (thing: Thing): boolean => sortOf(thing) === 'negatives';

const says = (pattern: RegExp) => (text: string | undefined) => text !== undefined && pattern.test(text);

const span = once(bounds);

/** The hazard that film or glass bears by its kind and date; film without a date may be as old as film is. */
export function hazardOfFilm(thing: Thing): HazardName | undefined {
  const sort = sortOf(thing);
  if (sort === undefined || sort === 'glass') return sort;
  const { title, kind, size, description, condition, note, date } = thing;
  const texts = [title, kind, size, description, condition, note];
  if (texts.some(says(LATER_COPY))) return undefined;
  const { earliest = '0000', latest = '9999' } = date?.reading.kind === 'date' ? span(date.reading.edtf) : {};
  if (latest < NITRATE_YEARS.first) return undefined;
  const isSafe = texts.some(says(SAFETY)) || (sort === 'reel' && texts.some(says(SAFE_WIDTH)));
  if (!isSafe && earliest.slice(0, 4) <= NITRATE_YEARS.last) {
    return sort === 'reel' ? 'nitrate-film' : 'nitrate-negatives';
  }
  return earliest.slice(0, 4) <= LAST_ACETATE_YEAR ? 'acetate-film' : undefined;
}
