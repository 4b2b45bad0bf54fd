import { createHash } from 'node:crypto';
import { constants } from 'node:fs';
import { open } from 'node:fs/promises';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import type { CopyFacts } from './facts.ts';
import { gatherCopies } from './gather.ts';
import { drawThumbnail, MOST_PIXELS, readThumbnail, type Thumbnail } from './thumbnails-draw.ts';
import { type Kept, keptThumbnails } from './thumbnails-kept.ts';

export type { Thumbnail } from './thumbnails-draw.ts';

/**
 * Why a copy that is, or may be, a picture has no thumbnail: what is wrong with its file; `too large` to be drawn; or
 * `not drawn`, since it is damaged within, of a kind too rare, or was changed in this very moment.
 */
interface ThumbnailTrouble {
  path: string;
  trouble: NonNullable<CopyFacts['trouble']> | 'too large' | 'not drawn';
}

interface Thumbnails {
  /** By the path of the copy, in the order of the list. */
  thumbnails: ReadonlyMap<string, Thumbnail>;
  troubles: readonly ThumbnailTrouble[];
}

/** What is drawn. Not SVG, which may reach for other files, and not raw data, in which each maker hides other pictures. */
const DRAWN = new Set(['image/jpeg', 'image/png', 'image/tiff', 'image/webp', 'image/gif', 'image/avif']);

/** In bytes. */
const MOST_BYTES = 1 << 30;

/** Above these, in bytes and pixels, a copy is drawn by itself, so that memory never holds several such. */
const LARGE_BYTES = 1 << 26;
const LARGE_PIXELS = 50_000_000;

/** Node hands work like this to four threads at most. */
const AT_A_TIME = Math.min(4, availableParallelism());

/**
 * Thumbnails of the digital copies that are pictures. Those drawn before are kept beside the catalogue, and swept away
 * once none of these copies needs them. Nothing outside the catalogue folder is read.
 * @param copies paths below the catalogue folder, as the list names them; addresses on the web are left out
 * @param options `step` is called twice for each copy: when its content is known, and when its thumbnail is there
 */
export async function thumbnailsOf(
  folder: string,
  copies: readonly string[],
  { step = () => {} }: { step?: (path: string) => void } = {},
): Promise<Thumbnails> {
  const facts = await gatherCopies(folder, copies, { step });
  const kept = await keptThumbnails(folder);
  const results = new Map<CopyFacts, Result>();
  // Copies of the same content are drawn once.
  const contents = new Map<Content[0], Content[1]>();
  for (const copy of facts.values()) {
    const trouble = troubleOf(copy);
    const same = contents.get(copy.sha256 ?? '');
    if (trouble !== undefined) results.set(copy, { trouble });
    if (trouble !== undefined || !isDrawn(copy) || copy.sha256 === undefined) step(copy.path);
    else if (same === undefined) contents.set(copy.sha256, [copy]);
    else same.push(copy);
  }
  const draw = async ([sha256, same]: Content) => {
    const result = await resultOf(folder, same[0], sha256, kept);
    for (const copy of same) {
      results.set(copy, result);
      step(copy.path);
    }
  };
  const large = ([, [copy]]: Content) => isLarge(copy);
  await eachOf(
    [...contents].filter((content) => !large(content)),
    AT_A_TIME,
    draw,
  );
  await eachOf([...contents].filter(large), 1, draw);
  await kept.sweep(new Set(contents.keys()));
  return inOrder(facts.values(), results);
}

/** The check sum of a content, and the copies that have it. */
type Content = [sha256: string, copies: [CopyFacts, ...CopyFacts[]]];

type Result = { thumbnail: Thumbnail } | { trouble: ThumbnailTrouble['trouble'] };

const isDrawn = ({ mediaType }: CopyFacts) => mediaType !== undefined && DRAWN.has(mediaType);

const pixels = ({ width = 0, height = 0 }: CopyFacts) => width * height;

const isLarge = (copy: CopyFacts) => copy.bytes > LARGE_BYTES || pixels(copy) > LARGE_PIXELS;

/** What is a broken film is no trouble here. */
function troubleOf(copy: CopyFacts): ThumbnailTrouble['trouble'] | undefined {
  if (copy.mediaType !== undefined && !isDrawn(copy)) return undefined;
  const isTooLarge = isDrawn(copy) && (copy.bytes > MOST_BYTES || pixels(copy) > MOST_PIXELS);
  return copy.trouble ?? (isTooLarge ? 'too large' : undefined);
}

async function resultOf(folder: string, copy: CopyFacts, sha256: string, kept: Kept): Promise<Result> {
  const before = await kept.read(sha256);
  if (before !== undefined) return { thumbnail: before };
  const content = await contentOf(join(folder, copy.path), copy.bytes, sha256).catch(() => undefined);
  const jpeg = content && (await drawThumbnail(content));
  const thumbnail = jpeg && readThumbnail(jpeg);
  if (jpeg === undefined || thumbnail === undefined) return { trouble: 'not drawn' };
  await kept.keep(sha256, jpeg);
  return { thumbnail };
}

/**
 * Whatever the path leads to by now, only the very bytes that were found within the catalogue folder are handed on; so
 * no link is followed out of it, and no thumbnail is kept for another content than its own.
 */
async function contentOf(path: string, size: number, sha256: string): Promise<Buffer | undefined> {
  const { O_RDONLY, O_NONBLOCK = 0 } = constants;
  const file = await open(path, O_RDONLY | O_NONBLOCK);
  try {
    const there = await file.stat();
    if (!there.isFile() || there.size !== size) return undefined;
    const content = await file.readFile();
    return createHash('sha256').update(content).digest('hex') === sha256 ? content : undefined;
  } finally {
    await file.close();
  }
}

async function eachOf<T>(
  items: readonly T[],
  atATime: number,
  work: (item: T) => Promise<void>,
): Promise<void> {
  const queue = items.values();
  const worker = async () => {
    for (const item of queue) await work(item);
  };
  await Promise.all(Array.from({ length: atATime }, worker));
}

function inOrder(facts: Iterable<CopyFacts>, results: ReadonlyMap<CopyFacts, Result>): Thumbnails {
  const thumbnails = new Map<string, Thumbnail>();
  const troubles: ThumbnailTrouble[] = [];
  for (const copy of facts) {
    const result = results.get(copy);
    if (result === undefined) continue;
    if ('thumbnail' in result) thumbnails.set(copy.path, result.thumbnail);
    else troubles.push({ path: copy.path, trouble: result.trouble });
  }
  return { thumbnails, troubles };
}
