import type { Thing } from '../catalogue/thing.ts';
import type { DangerColumn, DangerWord } from './danger-words.ts';
import { type Material, materialOf, materialSaid } from './material.ts';
import { isOwnRust } from './own-rust.ts';
import { isBeside, isDenied, isEnclosed, isOfItsBody, isStory, isToldOf } from './word-context.ts';
import type { Met } from './word-finder.ts';

/** A row of the table of dangers, with its words as sets. */
export interface ReadyWord extends DangerWord {
  harmless: ReadonlySet<string>;
  companions?: ReadonlySet<string>;
}

/** A row of the table, made ready for many texts. */
export const readyWord = (row: DangerWord): ReadyWord => ({
  ...row,
  harmless: new Set(row.unless),
  ...(row.beside !== undefined && { companions: new Set(row.beside) }),
});

const ALBUM = /\b(?:album|scrapbook)s?\b/i;
const SHOWN: ReadonlySet<Material> = new Set(['picture', 'plate']);
const TELLING: ReadonlySet<Material> = new Set(['paper', 'picture', 'plate', 'film', 'sound']);

/** Whether a word that was met means that the thing is, or has, what it says. */
export function counts(met: Met<ReadyWord>, column: DangerColumn, thing: Thing): boolean {
  const { columns, of, harmless, companions, ofItself } = met.row;
  if (!columns.includes(column) || isBeside(met, harmless) || isDenied(met)) return false;
  if (companions !== undefined && !isBeside(met, companions)) return false;
  const material = materialAt(met, column, thing);
  if (material === 'digital') return false;
  if (met.row.hazard === 'fasteners' && isOwnRust(met, thing)) return false;
  const isThing = columns.includes('kind');
  if (column === 'condition') return of?.includes(material) !== false || (isThing && isEnclosed(met));
  if (column !== 'kind' && column !== 'size' && isToldOf(met, column === 'note')) return false;
  if (of?.includes(material) === false) return isThing && column !== 'title' && isEnclosed(met);
  if (isThing) return (column !== 'description' && column !== 'note') || !isStory(met);
  if (column === 'description' && TELLING.has(material)) return isOfItsBody(met);
  // A picture's title says what it shows: "mouldy hay", but "mouldy photographs".
  if (column === 'title' && SHOWN.has(material) && ofItself !== true && !ALBUM.test(thing.kind ?? '')) {
    return materialSaid(met.text, 0, met.end) !== 'unknown';
  }
  return true;
}

function materialAt(met: Met<unknown>, column: DangerColumn, { kind, title }: Thing): Material {
  const known = kind === undefined ? 'unknown' : materialOf(kind);
  if (known !== 'unknown') return known;
  return column === 'title' ? materialSaid(met.text, met.at, met.end) : materialSaid(title);
}
