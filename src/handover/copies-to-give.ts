import type { Arrangement } from '../arrange/index.ts';
import { placedCodes } from '../arrange/index.ts';
import type { Settings } from '../catalogue/settings.ts';
import type { Thing } from '../catalogue/thing.ts';
import { type CopyFacts, isPath } from '../copies/facts.ts';
import { extensionOf, mediaTypeOf } from '../copies/media-types.ts';
import { safeName } from './bag/index.ts';
import { plainLetters } from './plain-letters.ts';

/** A digital copy in a package. */
export interface CopyToGive {
  /** Path below the catalogue folder, as the list names it. */
  path: string;
  /** Its name in the folder `copies`; undefined where there is no file that could be copied. */
  name?: string;
  /** Reference code of the thing it shows, the first of several. */
  code: string;
  facts: CopyFacts;
}

/**
 * The copies of the given things in the order of the arrangement, each file once, under names that say what they are:
 * the reference code, the title, a running number for each thing.
 * @param facts by path
 */
export function copiesToGive(
  { groups }: Arrangement,
  settings: Settings,
  facts: ReadonlyMap<string, CopyFacts>,
): CopyToGive[] {
  const namer = copyNamer(facts);
  const copies = new Map<string, CopyToGive>();
  for (const [{ title, copies: named }, code] of placedCodes(groups, settings).things) {
    const paths = named.filter((path) => isPath(path) && !copies.has(path));
    for (const copy of namer(title, code, paths)) copies.set(copy.path, copy);
  }
  return [...copies.values()];
}

/** Names the copies of one thing or unit after another, with a running number for each. */
export function copyNamer(
  facts: ReadonlyMap<string, CopyFacts>,
): (title: string, code: string, paths: readonly string[]) => CopyToGive[] {
  const taken = new Set<string>();
  return (title, code, paths) => {
    let number = 0;
    return [...new Set(paths)].map((path) => {
      const known = facts.get(path) ?? { path, bytes: 0, trouble: 'missing' };
      const isThere = known.trouble === undefined || known.trouble === 'damaged';
      if (isThere) number += 1;
      const name = isThere ? safeName(nameOf(title, code, number, known), taken) : undefined;
      return { path, code, facts: known, ...(name !== undefined && { name }) };
    });
  };
}

/** In characters; the code, the number and the ending stand whole beside it in the 120 bytes that a name may have. */
const LONGEST_TITLE = 60;

function nameOf(title: string, code: string, number: number, facts: CopyFacts): string {
  const words = joinedWords(title);
  const cut = words.slice(0, LONGEST_TITLE + 1);
  const short = words.length <= LONGEST_TITLE ? words : cut.slice(0, Math.max(20, cut.lastIndexOf('-')));
  return `${joinedWords(code)}_${short}_${number}${extensionFor(facts)}`;
}

/** Without blanks and signs, which mean something to some program somewhere. */
const joinedWords = (text: string) =>
  plainLetters(text)
    .replace(/['’]/g, '')
    .replace(/[^\p{L}\p{M}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '');

/** The ending that the file has, or, where that is not one of its type, the usual one. */
function extensionFor({ path, mediaType }: CopyFacts): string {
  const own = extensionOf(path);
  const usual = mediaType === undefined ? [] : (mediaTypeOf(mediaType)?.extensions ?? []);
  const extension = usual.length === 0 || usual.includes(own) ? own : (usual[0] ?? own);
  return extension === '' ? '' : `.${extension}`;
}

/** A thing with its copies named as they are in the package; what cannot be copied is left out, addresses stay. */
export function withNames(thing: Thing, copies: ReadonlyMap<string, CopyToGive>, before: string): Thing {
  const named = thing.copies.flatMap((path) => {
    if (!isPath(path)) return [path];
    const name = copies.get(path)?.name;
    return name === undefined ? [] : [`${before}${name}`];
  });
  return { ...thing, copies: named };
}
