import { fold } from '../catalogue/fold.ts';
import { isOrganisation } from '../catalogue/organisation-words.ts';

const NONE: readonly string[] = [];

/** The parts of a cell that holds several: parted by semicolons or line breaks. Blank parts do not count. */
export function splitCell(cell: string): readonly string[] {
  if (cell === '') return NONE;
  if (!cell.includes(';') && !cell.includes('\n')) return [cell];
  const parts = cell
    .split(/[;\n]/)
    .map((part) => part.trim())
    .filter((part) => part !== '');
  return [...new Set(parts)];
}

/** "And", in the languages in which lists are written most; `y`, `e` and `i` stand within names. */
const AND = '(?:and|&|\\+|und|u\\.|og|och|et|en)';
const JOINED = new RegExp(`\\s${AND}\\s`, 'i');
const BETWEEN_NAMES = new RegExp(`\\s*,\\s+(?:${AND}\\s+)?|\\s+${AND}\\s+`, 'iu');
const BETWEEN_LANGUAGES = new RegExp(`\\s*[,/]\\s*|\\s+${AND}\\s+`, 'gi');
// A given name or an initial, and a surname, with what may stand before either: "Ann Moss", "A. van der Moss".
const FULL_NAME =
  /^(?:(?:mr|mrs|miss|ms|dr|rev)\.? )?\p{Lu}[\p{L}\p{M}.’'-]*(?: \p{Lu}[\p{L}\p{M}.’'-]*)*(?: (?:van|von|de|der|den|la|le|af|av|zu))* \p{Lu}[\p{L}\p{M}’'-]+$/u;
const NO_NAME = /^(?:the|of)\b|\b(?:jr|sr|junior|senior|esq|esquire)\.?$/i;

/**
 * Whether a name may be two: `Ada & Nils Quill`, `Ann Moss, Ruth Moss`. `Quill, Ada Mary` is one turned round, and a
 * firm such as `Hask & Sons` one by itself.
 */
export function maybeTwo(name: string): boolean {
  const comma = name.includes(',');
  if (!comma && !JOINED.test(name)) return false;
  if (isOrganisation(fold(name))) return false;
  if (JOINED.test(name)) return true;
  return name.split(/,\s*/).every((part) => FULL_NAME.test(part.trim()) && !NO_NAME.test(part.trim()));
}

/**
 * The people in one cell. Names hold commas (Quill, Ada) and the like of `&` (Quill & Sons), so these part names only
 * where every part is a name that `collection.yaml` knows.
 * @param known the known names in small letters
 */
export function splitNames(cell: string, known: ReadonlySet<string>): readonly string[] {
  const parts = splitCell(cell);
  if (known.size === 0) return parts;
  return parts.flatMap((part) => {
    if (known.has(part.toLowerCase())) return [part];
    const names = part.split(BETWEEN_NAMES);
    const all =
      names.length > 1 && names.every((name) => name.includes(' ') && known.has(name.toLowerCase()));
    return all ? names : [part];
  });
}

/** The languages of one cell; no name of a language holds a comma, a stroke or an "and". */
export function splitLanguages(cell: string): readonly string[] {
  return splitCell(cell.replace(BETWEEN_LANGUAGES, ';'));
}
