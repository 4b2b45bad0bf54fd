import type { Finding } from '../catalogue/finding.ts';
import { fold } from '../catalogue/fold.ts';
import { BOXES } from './boxes.ts';
import type { Holder } from './model.ts';

/** What is wrong with how folders and boxes are named in collection.yaml. */
export const must = (rule: string, found: string, advice: string): Finding => ({
  rule,
  weight: 'must',
  place: { file: 'collection.yaml' },
  found,
  advice,
});

/** A name that is none, or that of several. */
export function unknownName(
  what: 'box' | 'folder',
  name: string,
  meant: readonly string[],
  rows: readonly { one: string }[],
): Finding {
  const found =
    meant.length > 1
      ? `“${name}” under “housing” is the name of more than one ${what}.`
      : `“${name}” under “housing” is not the name of a ${what} that is known.`;
  const all = meant.length === 0 ? rows.map(({ one }) => one) : meant;
  const names = all.map((one) => `“${one}”`);
  if (meant.length === 1) return must(`housing.unknown-${what}`, found, `Is ${names[0]} meant?`);
  const advice = `Name one of ${names.join(', ')}${what === 'box' ? '; or give the measures of your own under “own”' : ''}.`;
  return must(`housing.unknown-${what}`, found, advice);
}

/** Boxes of one's own with a name that another box has. */
export function namedTwice(names: readonly string[]): Finding[] {
  const listed = new Set(BOXES.flatMap(({ id, one }) => [id, fold(one)]));
  return names.flatMap((name, index) => {
    const before = names.slice(0, index).some((other) => fold(other) === fold(name));
    if (!before && !listed.has(fold(name))) return [];
    const found = `There ${before ? 'are two boxes of your own' : 'is a usual box'} called “${name}”.`;
    return [must('housing.own-twice', found, 'Give your own a name that no other box has.')];
  });
}

export const goesIntoNone = (holder: Holder) =>
  must(
    'housing.folder-without-box',
    `“${holder.one}”${measured(holder)} goes into none of the boxes to be used.`,
    'Name a larger box for it, or leave it out.',
  );

export const noFolder = (folder: Holder | undefined) =>
  must(
    'housing.box-without-folder',
    'None of the boxes for papers is large enough for a folder.',
    `Name a larger box for papers${folder === undefined ? '' : `: “${folder.one}”${measured(folder)} must go in`}. If none is named, the usual ones are used.`,
  );

const measured = ({ outside: { long, short } }: Holder) =>
  ` (${Math.round(long)} × ${Math.round(short)} mm outside)`;
