import { readKind } from '../arrange/index.ts';
import type { Finding } from '../catalogue/finding.ts';
import type { Thing } from '../catalogue/thing.ts';
import { INCH } from '../housing/measures.ts';
import type { Size } from '../housing/model.ts';
import { readSize } from '../housing/read-size.ts';
import { type Case, type Copy, type CopyRule, caseOf, say } from './copies-said.ts';
import { FLAT, RESOLUTIONS, type Resolution } from './resolutions.ts';

const RESOLUTION: CopyRule = {
  rule: 'copies.resolution',
  weight: 'should',
  one: (name, what) => `${name} is too coarse to stand for the thing: ${what}.`,
  many: (count) => `${count} copies are too coarse to stand for their things`,
  advice: 'Scan it again as finely as that while the thing is at hand. To enlarge the file adds nothing.',
  source: 'FADGI technical guidelines for digitizing cultural heritage materials, two stars; from memory',
};

/** Sizes in a list are rounded, and scans are cropped: so much less than the measure is let pass. */
const LENIENT = 0.95;

/** Copies that are too small for the size of what they show; of several copies of a thing, the finest counts. */
export function reviewResolution(copies: readonly Copy[]): Finding[] {
  const finest = new Map<Thing, Judged>();
  for (const copy of copies) {
    for (const thing of copy.things) {
      const judged = judge(copy, thing);
      const before = finest.get(thing);
      if (judged !== undefined && (before === undefined || judged.share > before.share))
        finest.set(thing, judged);
    }
  }
  const cases = [...finest].flatMap(([thing, { copy, share, what }]): Case[] =>
    share >= LENIENT ? [] : [{ ...caseOf(copy, { what }), row: thing.row, rows: 1 }],
  );
  return say(RESOLUTION, cases);
}

interface Judged {
  copy: Copy;
  /** What it has of what it should have; 1 is enough. */
  share: number;
  what: string;
}

function judge(copy: Copy, thing: Thing): Judged | undefined {
  const { width, height } = copy.facts ?? {};
  if (width === undefined || height === undefined) return undefined;
  const size = sizeOf(thing);
  const { perInch, along } = resolutionOf(thing, size?.long ?? 0);
  const [long, short] = [Math.max(width, height), Math.min(width, height)];
  const pixels = `${width} × ${height} pixels`;
  if (size === undefined || perInch === undefined) {
    const share = along === 0 ? 1 : long / along;
    return { copy, share, what: `${pixels}, where the longer side should have ${along}` };
  }
  // The better of the two sides: a copy may be cropped to a strip.
  const has = Math.max(long / (size.long / INCH), short / (size.short / INCH));
  return {
    copy,
    share: has / perInch,
    what: `${pixels} for “${thing.size}” are ${Math.floor(has)} an inch, where ${perInch} are usual`,
  };
}

function resolutionOf({ kind }: Thing, long: number): Resolution {
  const known = kind === undefined ? undefined : readKind(kind)?.kind;
  const special =
    RESOLUTIONS.find(({ kinds }) => known !== undefined && kinds?.includes(known.one)) ??
    RESOLUTIONS.find(({ group }) => known !== undefined && group === known.group);
  const flat = FLAT.find(({ over = 0 }) => long > over) ?? FLAT.at(-1);
  return special ?? flat ?? { along: 0, source: '' };
}

/** The size of what the copy shows, where the list tells it: not in words alone ("large"), nor that of a frame or a reel. */
function sizeOf({ size }: Thing): Size | undefined {
  if (size === undefined || !/\d/.test(size) || /fram/i.test(size)) return undefined;
  const read = readSize(size);
  return read.kind === 'size' && read.form !== 'film' ? read.size : undefined;
}
