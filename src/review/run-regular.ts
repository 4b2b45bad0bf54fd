/** A thing on a scale of years, months or numbers: the first and the last step of the scale that it fills. */
export interface Filled {
  from: number;
  to: number;
  /** Whether it shows that the series is regular; a doubtful date only fills its place. */
  isProof: boolean;
  /** The year, the date or the number as it is read; two things with the same one are there twice. */
  said: string;
  row: number;
  /** Whether its number is said to be that of a volume: “vol. 2”. */
  isVolume?: true;
}

/** A regular series with what is missing from it and what is there more than once. */
export interface Run {
  first: number;
  last: number;
  /** From one to the next, in steps of the scale: 2 for every second year. */
  step: number;
  missing: number[];
  twice: Twice[];
  rows: number[];
}

interface Twice {
  from: number;
  to: number;
  rows: number[];
}

/** Fewer things are no run; of a wider step, one more is wanted, and fewer gaps: chance makes such a series sooner. */
const LEAST = { every: { things: 4, present: 0.6 }, wider: { things: 5, present: 0.75 } };
/** So many volumes, with one missing, are a run all the same. */
const FEW = 3;
/** The step from one thing to the next must be the same for this share of all steps. */
const SAME_STEP = 0.5;
/** A gap is wide where it is more than so many times the usual step. */
const WIDE_GAP = 12;
/** Where more than this share is there twice, there are two series in one and nothing is told by it. */
const MOST_TWICE = 0.25;

/**
 * The regular runs in a series. A few things far from all others belong to none. Where the rest is no run, each part of
 * it between wide gaps may be one that holds at least half of all things; so there are at most two.
 */
export function regularRuns(series: readonly Filled[]): Run[] {
  const sorted = [...series].sort((a, b) => a.from - b.from || a.to - b.to);
  const proofs = differentProofs(sorted);
  const all = proofs.length;
  const gap = WIDE_GAP * (commonStep(proofs)?.step ?? 1);
  const parts = partedAtGaps(sorted, gap).filter(
    (part) => differentProofs(part).length >= LEAST.every.things,
  );
  const whole = runOf(parts.flat(), all);
  if (whole !== undefined) return [whole];
  return parts.length < 2 ? [] : parts.flatMap((part) => runOf(part, all) ?? []);
}

/**
 * A work of few volumes: three are enough where all are said to be volumes, they begin with the first, and one between
 * them is not there.
 */
export function fewVolumes(series: readonly Filled[]): Run[] {
  if (series.length !== FEW || series.some(({ isVolume, from, to }) => isVolume !== true || from !== to))
    return [];
  const sorted = series.toSorted((a, b) => a.from - b.from);
  const there = new Set(sorted.map(({ from }) => from));
  const all = Array.from({ length: FEW + 1 }, (_, index) => index + 1);
  const missing = all.filter((place) => !there.has(place));
  if (there.size !== FEW || missing.length !== 1 || !there.has(1) || !there.has(FEW + 1)) return [];
  return [{ first: 1, last: FEW + 1, step: 1, missing, twice: [], rows: sorted.map(({ row }) => row) }];
}

/** Things that show the series regular, one for each place. */
function differentProofs(sorted: readonly Filled[]): Filled[] {
  const proofs = new Map(sorted.filter(({ isProof }) => isProof).map((each) => [each.from, each]));
  return [...proofs.values()];
}

/** @param all how many things show the whole series regular; a run has at least half of them */
function runOf(sorted: readonly Filled[], all: number): Run | undefined {
  const proofs = differentProofs(sorted);
  if (proofs.length * 2 < all) return undefined;
  const { step, share } = commonStep(proofs) ?? { step: 0, share: 0 };
  const first = proofs[0]?.from;
  if (share < SAME_STEP || first === undefined) return undefined;
  const last = proofs.reduce((latest, { to }) => Math.max(latest, to), first);
  const least = step === 1 ? LEAST.every : LEAST.wider;
  const isOnStep = (place: number) => (place - first) % step === 0;
  if (step > 1 && !proofs.every(({ from, to }) => isOnStep(from) && isOnStep(to))) return undefined;
  const places = Math.floor((last - first) / step) + 1;
  const within = sorted.filter(({ from, to }) => to >= first && from <= last);
  // Before anything is counted singly: numbers without order may lie far apart.
  const most = within.reduce((sum, { from, to }) => sum + Math.min(to, last) - Math.max(from, first) + 1, 0);
  if (proofs.length < least.things || most < least.present * places) return undefined;
  const there = new Set<number>();
  for (const { from, to } of within)
    for (let place = Math.max(from, first); place <= Math.min(to, last); place++) there.add(place);
  const missing: number[] = [];
  for (let place = first; place <= last; place += step) if (!there.has(place)) missing.push(place);
  if (places - missing.length < least.present * places) return undefined;
  return { first, last, step, missing, twice: twiceIn(within), rows: within.map(({ row }) => row) };
}

/** The step that most things are from the one before, the smaller one of two that are as frequent, and for what share. */
function commonStep(proofs: readonly Filled[]): { step: number; share: number } | undefined {
  const steps: number[] = [];
  let reached: number | undefined;
  for (const { from, to } of proofs) {
    if (reached !== undefined && from > reached) steps.push(from - reached);
    reached = Math.max(reached ?? to, to);
  }
  const times = new Map<number, number>();
  for (const step of steps) times.set(step, (times.get(step) ?? 0) + 1);
  const [common] = [...times].sort((a, b) => b[1] - a[1] || a[0] - b[0]);
  return common && { step: common[0], share: common[1] / steps.length };
}

function partedAtGaps(sorted: readonly Filled[], gap: number): Filled[][] {
  const parts: Filled[][] = [];
  let reached: number | undefined;
  for (const each of sorted) {
    if (reached === undefined || each.from - reached > gap) parts.push([]);
    parts.at(-1)?.push(each);
    reached = Math.max(reached ?? each.to, each.to);
  }
  return parts;
}

function twiceIn(within: readonly Filled[]): Twice[] {
  const same = new Map<string, Twice>();
  for (const { from, to, said, row, isProof } of within) {
    if (!isProof) continue;
    const known = same.get(said);
    if (known === undefined) same.set(said, { from, to, rows: [row] });
    else known.rows.push(row);
  }
  const twice = [...same.values()].filter(({ rows }) => rows.length > 1);
  return twice.length > Math.max(1, MOST_TWICE * same.size) ? [] : twice;
}
