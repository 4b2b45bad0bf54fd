import type { Finding } from '../catalogue/finding.ts';
import type { MediaType } from '../copies/media-type.ts';
import { extensionOf, mediaTypeOf, typesNamed } from '../copies/media-types.ts';
import { stemOf } from './copies-nearest.ts';
import { type Case, type Copy, type CopyRule, caseOf, say } from './copies-said.ts';

const CONTRADICTS: CopyRule = {
  rule: 'copies.extension',
  weight: 'should',
  one: (name, what) => `The ending of ${name} contradicts the content: ${what}.`,
  many: (count) => `${count} copies have endings that contradict their content`,
  advice: 'Open it and look. If it is what it should be, mend the ending; if not, look for the true copy.',
  source: 'The specification of each format, on how a file begins',
};

const NO_EXTENSION: CopyRule = {
  rule: 'copies.no-extension',
  weight: 'consider',
  one: (name, what) =>
    `The name ${name} has no ending, by which many systems know how to open a file (${what} by its content).`,
  many: (count) => `${count} copies have no ending, by which many systems know how to open a file`,
  advice: 'Add the ending to the name of the file, and in the list.',
  source: 'common practice',
};

const UNFIT: CopyRule = {
  rule: 'copies.format',
  weight: 'consider',
  one: (name, what) => `${name} is in a doubtful form to keep: ${what}.`,
  many: (count) => `${count} copies are in doubtful forms to keep`,
  advice:
    'Keep the file as it is, and beside it a copy in an open form; ask the receiving archive what it takes.',
  source: 'common practice, after lists of preferred formats of national libraries; from memory',
};

const LOCATION: CopyRule = {
  rule: 'copies.location',
  weight: 'caution',
  one: (name) =>
    `${name} tells where it was made, to some metres; for a picture taken at home, that is the address.`,
  many: (count) => `${count} copies tell where they were made, to some metres`,
  advice:
    'Whoever gets the file can read it. Where somebody lives there, hand on a copy without it, or agree with the receiving archive on who may see it.',
  source: 'Exif 2.32, 4.6.6 (from memory); common practice',
};

/** What the content of the copies says against their names, their forms, and giving them away. */
export function reviewContent(copies: readonly Copy[]): Finding[] {
  const good = copies.filter(({ facts }) => facts !== undefined && facts.bytes > 0);
  return [
    ...say(CONTRADICTS, good.flatMap(contradiction)),
    ...say(NO_EXTENSION, good.flatMap(noExtension)),
    ...say(UNFIT, unfit(good)),
    ...say(
      LOCATION,
      good.filter(({ facts }) => facts?.hasLocation === true).map((copy) => caseOf(copy)),
    ),
  ];
}

function contradiction(copy: Copy): Case[] {
  const named = typesNamed(extensionOf(copy.path));
  const [first] = named;
  const type = copy.facts?.mediaType;
  if (first === undefined || named.some((one) => agrees(one, type))) return [];
  const content = mediaTypeOf(type ?? '')?.name ?? 'nothing that is known';
  return [caseOf(copy, { what: `${first.name} by its name, ${content} by its content` })];
}

/** Whether a file named for one type may have the content of the other, which may be wrapped in it or wrap it. */
function agrees(named: MediaType, type: string | undefined): boolean {
  // Only what always begins in the same way can be missed at the beginning.
  if (type === undefined) return named.begins === undefined && named.brands === undefined;
  return named.type === type || named.inside === type || named.type === mediaTypeOf(type)?.inside;
}

function noExtension(copy: Copy): Case[] {
  const row = mediaTypeOf(copy.facts?.mediaType ?? '');
  if (row === undefined || extensionOf(copy.path) !== '') return [];
  const advice = `Add .${row.extensions[0]} to the name of the file, and in the list.`;
  return [caseOf(copy, { what: row.name, advice })];
}

/** A form that is doubtful does no harm where the same row names the like in a better one: IMG_7.heic and IMG_7.jpg. */
function unfit(copies: readonly Copy[]): Case[] {
  const keys = ({ path, things }: Copy) => things.map(({ row }) => `${row} ${stemOf(path)}`);
  const unfitBecause = (copy: Copy) => mediaTypeOf(copy.facts?.mediaType ?? '')?.unfit;
  const isFit = (copy: Copy) =>
    copy.facts?.mediaType !== undefined &&
    copy.facts.trouble === undefined &&
    unfitBecause(copy) === undefined;
  const covered = new Set(copies.filter(isFit).flatMap(keys));
  return copies.flatMap((copy) => {
    const row = mediaTypeOf(copy.facts?.mediaType ?? '');
    if (row?.unfit === undefined || keys(copy).some((key) => covered.has(key))) return [];
    return [caseOf(copy, { what: `${row.name}, ${row.unfit}` })];
  });
}
