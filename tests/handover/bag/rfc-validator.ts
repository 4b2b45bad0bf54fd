import { spawnSync } from 'node:child_process';
import {
  existsSync,
  lstatSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join, posix } from 'node:path';

/**
 * A validator of bags written from RFC 8493 alone (sections in the comments), with nothing of the program in it. The
 * checksums are reckoned and compared by `sha512sum --check` and its siblings.
 * @returns every reason why the bag is not valid; none where it is
 */
export function judgeByRfc(bag: string): string[] {
  const reasons: string[] = [];
  // 2.1.1: two lines, in UTF-8, without a byte order mark.
  if (!existsSync(join(bag, 'bagit.txt'))) return ['no bagit.txt'];
  const [first = '', second = '', ...more] = lines(readFileSync(join(bag, 'bagit.txt'), 'utf8'));
  const version = /^BagIt-Version: (\d+\.\d+)$/.exec(first)?.[1];
  const encoding = /^Tag-File-Character-Encoding: (\S+)$/.exec(second)?.[1];
  if (version === undefined) reasons.push('no version');
  if (encoding === undefined) reasons.push('no encoding');
  if (more.length > 0) reasons.push('more than two lines in bagit.txt');
  const isFinal = version === '1.0';
  const text = (file: string) => new TextDecoder(encoding ?? 'utf-8').decode(bytesIn(bag, file, encoding));

  const files = filesBelow(bag);
  const payload = new Set(files.filter((file) => file.startsWith('data/')));
  const top = readdirSync(bag);
  const manifests = top.filter((file) => /^manifest-[a-z0-9]+\.txt$/.test(file));
  const tagManifests = top.filter((file) => /^tagmanifest-[a-z0-9]+\.txt$/.test(file));
  // 2.1: a payload folder and at least one payload manifest.
  if (!top.includes('data') || !lstatSync(join(bag, 'data')).isDirectory()) reasons.push('no data/');
  if (manifests.length === 0) reasons.push('no manifest');

  const everListed = new Set<string>();
  for (const file of [...manifests, ...tagManifests]) {
    const listed = entries(text(file), isFinal);
    if (listed === undefined) {
      reasons.push(`${file}: a line that is none`);
      continue;
    }
    const paths = listed.map(({ path }) => posix.normalize(path));
    for (const path of paths) {
      everListed.add(path);
      // 2.1.3 and 2.2.1: payload manifests list payload, tag manifests do not. 5: nothing outside of the bag.
      const isOut = /^(?:\/|~|[A-Za-z]:|\\|\.\.)/.test(path);
      if (isOut || path.startsWith('data/') !== manifests.includes(file))
        reasons.push(`${file}: ${path} is out of place`);
      else if (!files.includes(path)) reasons.push(`${file}: ${path} is missing`);
    }
    // 2.1.3: "exactly once"; before 1.0, with one checksum only.
    const sums = new Map<string, string>();
    for (const [at, { sum }] of listed.entries()) {
      const path = paths[at] ?? '';
      const before = sums.get(path);
      if (before !== undefined && (isFinal || before !== sum))
        reasons.push(`${file}: ${path} is listed twice`);
      sums.set(path, sum);
    }
    // 3: every payload file in every payload manifest; before 1.0, in any.
    if (isFinal && manifests.includes(file))
      for (const path of payload) if (!paths.includes(path)) reasons.push(`${file}: ${path} is not listed`);
    // 2.2.1: each tag manifest lists every payload manifest, and no tag manifest.
    if (isFinal && tagManifests.includes(file)) {
      for (const one of manifests) if (!paths.includes(one)) reasons.push(`${file}: ${one} is not listed`);
      for (const one of tagManifests) if (paths.includes(one)) reasons.push(`${file}: ${one} is listed`);
    }
    const inside = listed.filter((_, at) => files.includes(paths[at] ?? ''));
    reasons.push(...checked(bag, file, inside));
  }
  for (const path of payload) if (!everListed.has(path)) reasons.push(`${path} is listed nowhere`);
  // 2.2.3: what is to be fetched is payload.
  if (top.includes('fetch.txt')) {
    for (const line of lines(text('fetch.txt'))) {
      const path = /^\S+[ \t]+(?:\d+|-)[ \t]+(.*)$/.exec(line)?.[1];
      if (path === undefined || !posix.normalize(path).startsWith('data/'))
        reasons.push(`fetch.txt: ${line}`);
    }
  }
  // 2.2.2: octets and streams of the payload.
  const info = top.includes('bag-info.txt') ? text('bag-info.txt') : '';
  const [, oxum] = /^Payload-Oxum[ \t]*:[ \t]*(\S+)[ \t]*$/im.exec(info) ?? [];
  const size = [...payload].reduce((sum, path) => sum + lstatSync(join(bag, path)).size, 0);
  if (oxum !== undefined && oxum !== `${size}.${payload.size}`) reasons.push(`Payload-Oxum ${oxum}`);
  return reasons;
}

function lines(text: string): string[] {
  return text.split(/\r\n|\r|\n/).filter((line) => line !== '');
}

/** 2.3: in the declared encoding. A UTF-16 file of high bytes first is turned round for the decoder. */
function bytesIn(bag: string, file: string, encoding: string | undefined): Buffer {
  const bytes = readFileSync(join(bag, file));
  return encoding === 'UTF-16' && bytes[0] === 0xfe ? bytes.swap16() : bytes;
}

function filesBelow(bag: string): string[] {
  return readdirSync(bag, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => posix.relative(bag, join(entry.parentPath, entry.name)));
}

/** 2.1.3: checksum, blanks, path; line ends encoded by per cent, and since 1.0 the per cent sign too. */
function entries(text: string, isFinal: boolean): { sum: string; path: string }[] | undefined {
  const listed = lines(text).map((line) => /^([0-9a-fA-F]+)[ \t]+\*?(.+)$/.exec(line));
  if (listed.includes(null)) return undefined;
  return listed.map((match) => {
    const raw = match?.[2] ?? '';
    const encoded = isFinal ? /%0a|%0d|%25/gi : /%0a|%0d/gi;
    const path = raw.replace(encoded, (code) => String.fromCharCode(Number.parseInt(code.slice(1), 16)));
    return { sum: (match?.[1] ?? '').toLowerCase(), path };
  });
}

/** Has the checksums compared by the system's own program. In its lists, a backslash before a line announces escapes. */
function checked(bag: string, manifest: string, listed: readonly { sum: string; path: string }[]): string[] {
  if (listed.length === 0) return [];
  const algorithm = manifest.replace(/^.*-|\.txt$/g, '');
  const folder = mkdtempSync(join(tmpdir(), 'kinfonds-rfc-'));
  const list = join(folder, 'sums');
  const line = ({ sum, path }: { sum: string; path: string }) => {
    const escaped = path.replace(/\\/g, '\\\\').replace(/\n/g, '\\n').replace(/\r/g, '\\r');
    return `${escaped === path ? '' : '\\'}${sum}  ${escaped}\n`;
  };
  writeFileSync(list, listed.map(line).join(''));
  const { status, stdout, stderr } = spawnSync(`${algorithm}sum`, ['--check', '--strict', '--quiet', list], {
    cwd: bag,
    encoding: 'utf8',
    env: { ...process.env, LC_ALL: 'C' },
  });
  rmSync(folder, { recursive: true });
  return status === 0 ? [] : [`${manifest}: ${stdout}${stderr}`];
}
