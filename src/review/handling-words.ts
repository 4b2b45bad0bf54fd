/** What can be done at the table before a thing goes into its folder, in the order in which it is done. */
export const TASKS = {
  isolate: 'Do not open it here: keep it apart, in paper and not in plastic, and ask a conservator.',
  enclose: 'Put it into a closed bag, apart from the rest, and ask a conservator or the receiving archive.',
  leave: 'Leave it as it is, force nothing, and ask a conservator.',
  unpin: 'Take out clips, pins, staples and rubber bands; lift the wire with a thin spatula, never pull.',
  seal: 'See to the seal first: press nothing on it, lay it on something soft so that it does not hang, and keep pieces of it in a paper envelope with the document. Unfold only what opens by itself; if it is stiff, do not force it.',
  tape: 'Leave tape that sticks, and ask a conservator; lay a sheet of acid-free paper over it.',
  unfold: 'Unfold it, and let it lie flat; where the fold is brittle, stop.',
  flatten: 'Let it lie under a light weight between clean paper for some days.',
  dust: 'Brush off loose dust with a soft dry brush, outward, away from the face.',
  support: 'Put loose parts together into a folder or wrapper of their own, and tie it with cotton tape.',
  binding:
    'Tie it with flat cotton tape, or wrap it in acid-free paper, so that nothing of the binding is lost. Never use glue or adhesive tape; ask a conservator.',
  mark: 'Wrap sharp or broken parts in paper, and write on the wrapper what is in it.',
} as const;

export type Task = keyof typeof TASKS;

/** Words of the condition column that ask for handling. */
export interface HandlingWord {
  task: Task;
  /** Whole words in lower case; a blank stands for a hyphen too. */
  words: readonly string[];
  source: string;
}

const P = 'common practice';
const row = (task: Task, words: string): HandlingWord => ({ task, words: words.split(', '), source: P });

/** Extend them a row at a time; of several that begin at one place the longest counts. */
export const HANDLING_WORDS: readonly HandlingWord[] = [
  row('isolate', 'mould, mold, mouldy, moldy, mildew, damp, wet, smells of vinegar, vinegar smell'),
  row('enclose', 'live insects, silverfish, woodworm, carpet beetle, carpet beetles, moths, booklice'),
  row(
    'leave',
    'stuck, stuck together, stuck in, stuck down, pasted, glued, will not open, will not come off, nailed, sealed, rolled, rolled tight, rolled up, varnish, flaking, lifting, crumbling, laminated, in a block, brittle',
  ),
  row(
    'unpin',
    'paper clip, paper clips, paperclip, paperclips, clip, clips, bulldog clip, bulldog clips, staple, staples, stapled, pin, pins, pinned, treasury tag, treasury tags, rubber band, rubber bands, elastic band, elastic bands, spike, on a spike, string, tied with string',
  ),
  row('tape', 'tape, sticky tape, adhesive tape, taped, taped up, mended with tape, gummed paper'),
  row(
    'unfold',
    'folded, folded up, folded small, folded in two, folded in four, folded in six, folded in eight, fold, folds, dog eared, dog ears, turned corner, turned corners',
  ),
  row('seal', 'wax seal, wax seals, seal, seals, sealing wax, pendent seal, pendant seal'),
  row('flatten', 'creased, creases, crumpled, curled, curling, cockled, wavy, warped, buckled'),
  row('dust', 'dusty, dust, dirty, grimy, soot, sooty, cobwebs, crumbs'),
  row(
    'support',
    'loose, loose pages, loose leaves, coming apart, falling apart, in pieces, in two pieces, in three pieces, in four pieces, torn across, detached, split, splitting',
  ),
  row(
    'binding',
    'boards off, board off, cover off, covers off, spine gone, spine off, spine broken, broken spine, spine torn, cover loose, covers loose, loose cover, boards loose, loose boards, spine loose, loose spine, hinge broken, broken hinge, binding broken, broken binding, binding loose, loose binding',
  ),
  row('mark', 'broken, cracked, shattered, sharp, splinters'),
];
