import { createHash } from 'node:crypto';
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { freshFolder } from '../../support/kinfonds.ts';

/** How a bag is to differ from a plain one. */
interface Difference {
  version?: string;
  encoding?: string;
  algorithms?: readonly string[];
  /** Tag files beside the manifests, by name. */
  tags?: Readonly<Record<string, string>>;
  /** Changes the lines of a manifest before it is written and listed. */
  lines?: (lines: string[], manifest: string) => string[];
}

/** Makes a bag with the files of a payload, by hand: RFC 8493, 2. @returns its folder */
export function bagOf(payload: Readonly<Record<string, string>>, difference: Difference = {}): string {
  const {
    version = '1.0',
    encoding = 'UTF-8',
    algorithms = ['sha512'],
    tags = {},
    lines = same,
  } = difference;
  const bag = join(freshFolder(), 'bag');
  mkdirSync(join(bag, 'data'), { recursive: true });
  const write = (path: string, content: string) => {
    mkdirSync(dirname(join(bag, path)), { recursive: true });
    writeFileSync(join(bag, path), content);
  };
  const sum = (algorithm: string, content: string) => createHash(algorithm).update(content).digest('hex');
  const tagFiles: Record<string, string> = {
    'bagit.txt': `BagIt-Version: ${version}\nTag-File-Character-Encoding: ${encoding}\n`,
    ...tags,
  };
  for (const [path, content] of Object.entries(payload)) write(`data/${path}`, content);
  for (const algorithm of algorithms) {
    const file = `manifest-${algorithm}.txt`;
    const listed = Object.entries(payload).map(
      ([path, content]) => `${sum(algorithm, content)}  data/${path}`,
    );
    tagFiles[file] = lines(listed, file)
      .map((line) => `${line}\n`)
      .join('');
  }
  for (const [path, content] of Object.entries(tagFiles)) write(path, content);
  for (const algorithm of algorithms) {
    const listed = Object.entries(tagFiles).map(([path, content]) => `${sum(algorithm, content)}  ${path}`);
    write(
      `tagmanifest-${algorithm}.txt`,
      lines(listed, 'tag')
        .map((line) => `${line}\n`)
        .join(''),
    );
  }
  return bag;
}

const same = (lines: string[]) => lines;
