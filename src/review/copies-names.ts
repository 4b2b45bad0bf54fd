import type { Finding } from '../catalogue/finding.ts';
import { caseless } from './copies-nearest.ts';
import { type Copy, type CopyRule, caseOf, say } from './copies-said.ts';

// Naming rules of Windows for files, from memory: what no name may hold, and names that belong to devices.
const FORBIDDEN = /[<>:"|?*\\]/;
const DEVICE = /^(?:con|prn|aux|nul|com[0-9¹²³]|lpt[0-9¹²³])(?:\.|$)/i;
const CONTROL = /[\p{Cc}\u200B-\u200F\u202A-\u202E\u2066-\u2069\uFEFF]/u;

/** In bytes of UTF-8; the limit of most file systems for one name (from memory). */
const LONGEST = 255;

const UNSAFE: CopyRule = {
  rule: 'copies.name-unsafe',
  weight: 'should',
  one: (name, what) => `The name ${name} will not survive on every system: ${what}.`,
  many: (count) => `${count} copies have names that will not survive on every system`,
  advice: 'Rename the file, and the copy in the list with it: letters, digits, - and _ are safe everywhere.',
  source: 'Naming rules of Windows for files, from memory',
};

const TOO_LONG: CopyRule = {
  rule: 'copies.name-too-long',
  weight: 'should',
  one: (name, what) => `The name ${name} is too long for most systems: ${what}.`,
  many: (count) => `${count} copies have names that are too long for most systems`,
  advice: `Shorten it to at most ${LONGEST} bytes; what the thing is called is in the list.`,
  source: 'Limits of file systems in use (NTFS, ext4, APFS), from memory',
};

const DECOMPOSED: CopyRule = {
  rule: 'copies.name-decomposed',
  weight: 'consider',
  one: (name) =>
    `In the name ${name} an accent is encoded apart from its letter, and gets lost on some systems.`,
  many: (count) => `${count} copies have names in which accents are encoded apart from their letters`,
  advice: 'Rename the file with plain letters, and the copy in the list with it.',
  source: 'Unicode Standard Annex #15, form NFC',
};

const COLLIDE: CopyRule = {
  rule: 'copies.names-collide',
  weight: 'should',
  one: (name, what) =>
    `The name ${name} differs from ${what} only in capitals or in how accents are encoded: on many systems there can only be one of them.`,
  many: (count) => `${count} copies differ from others only in capitals or in how accents are encoded`,
  advice:
    'Look whether they are two files, and rename one, so that neither replaces the other when they are copied.',
  source: 'Naming rules of Windows and macOS for files, from memory',
};

/** Names of copies that will not survive on another system. */
export function reviewNames(copies: readonly Copy[], unlisted: readonly string[]): Finding[] {
  const unsafe = copies.flatMap((copy) => {
    const what = whyUnsafe(copy.path);
    return what === undefined ? [] : [caseOf(copy, { what })];
  });
  const long = copies.flatMap((copy) => {
    const most = Math.max(...copy.path.split('/').map((name) => Buffer.byteLength(name)));
    return most > LONGEST ? [caseOf(copy, { what: `${most} bytes` })] : [];
  });
  const decomposed = copies.filter(({ path }) => path !== path.normalize('NFC'));
  return [
    ...say(UNSAFE, unsafe),
    ...say(TOO_LONG, long),
    ...say(
      DECOMPOSED,
      decomposed.map((copy) => caseOf(copy)),
    ),
    ...say(COLLIDE, collisions(copies, unlisted)),
  ];
}

function whyUnsafe(path: string): string | undefined {
  for (const name of path.split('/')) {
    const sign = FORBIDDEN.exec(name)?.[0];
    if (sign !== undefined) return `no name may hold ${sign} on Windows`;
    if (CONTROL.test(name)) return 'it holds a character that cannot be seen';
    if (DEVICE.test(name)) return `“${name}” belongs to a device on Windows`;
    if (/[ .]$/.test(name))
      return `Windows drops the ${name.endsWith(' ') ? 'blank' : 'full stop'} at the end of “${name}”`;
  }
  return undefined;
}

function collisions(copies: readonly Copy[], unlisted: readonly string[]) {
  // A name that no file bears is said to be missing, with the one that differs.
  const there = copies.filter(({ facts }) => facts?.trouble !== 'missing');
  const first = new Map<string, string>(unlisted.map((path) => [caseless(path), path]));
  return there.flatMap((copy) => {
    const other = first.get(caseless(copy.path));
    first.set(caseless(copy.path), copy.path);
    return other === undefined ? [] : [caseOf(copy, { what: `“${other}”` })];
  });
}
