import { type Dirent, lstatSync, readdirSync, realpathSync, type Stats } from 'node:fs';
import { join, relative, sep } from 'node:path';
import type { Finding } from '../../catalogue/finding.ts';

/** A file that lies in a bag. */
export interface BagFile {
  /** In bytes. */
  size: number;
  /** Where its bytes are: no link, and within the bag. */
  real: string;
}

/** What lies in a bag, by path below it with forward slashes. */
export interface Tree {
  files: Map<string, BagFile>;
  findings: Finding[];
}

/**
 * Looks through a folder without opening any file. Links to folders are not followed; a link to a file is, if that lies
 * in the folder too.
 * @param root the folder itself, with no link in its path
 */
export function lookThrough(root: string): Tree {
  const tree: Tree = { files: new Map(), findings: [] };
  const folders = [''];
  for (let folder = folders.pop(); folder !== undefined; folder = folders.pop()) {
    let entries: Dirent[];
    try {
      entries = readdirSync(join(root, folder), { withFileTypes: true });
    } catch (error) {
      say(tree, folder, 'bag.unreadable', `This folder cannot be looked into (${codeOf(error)}).`);
      continue;
    }
    for (const entry of entries) {
      const path = folder === '' ? entry.name : `${folder}/${entry.name}`;
      if (entry.isDirectory()) folders.push(path);
      else look(tree, root, path);
    }
  }
  return tree;
}

function look(tree: Tree, root: string, path: string): void {
  try {
    const real = join(root, path);
    const there = lstatSync(real);
    if (there.isSymbolicLink()) lookBehind(tree, root, path);
    else if (there.isFile()) tree.files.set(path, { size: there.size, real });
    else notAFile(tree, path, there);
  } catch (error) {
    say(tree, path, 'bag.unreadable', `It cannot be looked at (${codeOf(error)}).`);
  }
}

function notAFile(tree: Tree, path: string, there: Stats): void {
  const kind = there.isFIFO() ? 'a pipe' : there.isSocket() ? 'a socket' : 'a device';
  say(tree, path, 'bag.not-a-file', `This is ${kind} and no file. It was not opened.`);
}

function lookBehind(tree: Tree, root: string, path: string): void {
  let real: string;
  try {
    real = realpathSync(join(root, path));
  } catch {
    say(tree, path, 'bag.link', 'This is a link to something that is not there.');
    return;
  }
  const way = relative(root, real);
  if (
    way === '' ||
    way === '..' ||
    way.startsWith(`..${sep}`) ||
    way.startsWith(sep) ||
    /^[A-Za-z]:/.test(way)
  ) {
    say(tree, path, 'bag.link', 'This is a link that leads out of the bag. It was not followed.');
    return;
  }
  const there = lstatSync(real);
  if (!there.isFile()) {
    say(tree, path, 'bag.link', 'This is a link to something that is no file. It was not followed.');
    return;
  }
  tree.files.set(path, { size: there.size, real });
  const found = `This is a link to ${way.split(sep).join('/')} instead of a file; it may be lost in copying.`;
  tree.findings.push({ rule: 'bag.link-inside', weight: 'should', place: { file: path }, found });
}

function say(tree: Tree, file: string, rule: string, found: string): void {
  tree.findings.push({ rule, weight: 'must', place: { file }, found });
}

/** The code of an error of the system, such as EACCES. */
export function codeOf(error: unknown): string {
  return (error as NodeJS.ErrnoException).code ?? String(error);
}
