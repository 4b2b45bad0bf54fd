import { spawnSync } from 'node:child_process';
import {
  cpSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { freshFolder } from './support/kinfonds.ts';
import { longSuite } from './support/times.ts';

// On Windows npm is a command file, which needs a shell.
const shell = process.platform === 'win32';
const npm = (args: readonly string[], cwd: string) =>
  spawnSync('npm', args, {
    cwd,
    encoding: 'utf8',
    shell,
    env: { ...process.env, npm_config_offline: 'true' },
  });

const hasNpm = npm(['--version'], '.').status === 0;
if (!hasNpm) process.stderr.write('Left out: the package for npm: npm is not on this machine.\n');

const NOT_COPIED = new Set(['node_modules', '.git', 'dist', 'out', 'coverage']);

interface Packed {
  filename: string;
  files: { path: string; size: number }[];
}

/** Packs a copy of the project, so that what lies about in `dist` here is not in it, as in a fresh clone. */
function pack(): { tarball: string; files: Packed['files'] } {
  const project = join(freshFolder(), 'kinfonds');
  cpSync('.', project, { recursive: true, filter: (path) => !NOT_COPIED.has(relative('.', path)) });
  symlinkSync(resolve('node_modules'), join(project, 'node_modules'), 'junction');
  // What `find` and `export` leave behind where the example was tried out.
  writeFileSync(join(project, 'examples/quill-ferry/.kinfonds-find'), 'an index');
  const { status, stdout, stderr } = npm(['pack', '--json'], project);
  if (status !== 0) throw new Error(stderr);
  // What the build says comes before the list.
  const [packed]: Packed[] = JSON.parse(stdout.slice(stdout.search(/^\[/m)));
  if (packed === undefined) throw new Error('npm pack says nothing of what it packed.');
  return { tarball: join(project, packed.filename), files: packed.files };
}

/**
 * An empty folder into which the package was put as npm would put it: unpacked, with what it depends on beside it and
 * nothing else. The registry is not asked, so the latter is linked to what is installed here.
 */
function installed(tarball: string): string {
  const folder = freshFolder();
  const modules = join(folder, 'node_modules');
  mkdirSync(join(modules, 'kinfonds'), { recursive: true });
  const { status, stderr } = spawnSync(
    'tar',
    ['-xzf', tarball, '-C', join(modules, 'kinfonds'), '--strip-components=1'],
    { encoding: 'utf8' },
  );
  if (status !== 0) throw new Error(stderr);
  const { stdout } = npm(['ls', '--omit=dev', '--all', '--parseable'], resolve('.'));
  const top = resolve('node_modules');
  for (const path of stdout.split('\n').map((line) => line.trim())) {
    const name = relative(top, path);
    // What lies within another package comes with it.
    if (name === '' || name.startsWith('..') || /node_modules/.test(name)) continue;
    mkdirSync(dirname(join(modules, name)), { recursive: true });
    symlinkSync(path, join(modules, name), 'junction');
  }
  return folder;
}

(hasNpm ? longSuite : describe.skip)('the package for npm', () => {
  let files: string[] = [];
  let sizes = 0;
  let folder = '';
  const manifest = JSON.parse(readFileSync('package.json', 'utf8'));

  beforeAll(() => {
    const packed = pack();
    files = packed.files.map(({ path }) => path);
    sizes = packed.files.reduce((sum, { size }) => sum + size, 0);
    folder = installed(packed.tarball);
  }, 240_000);

  const run = (...args: string[]) => {
    const main = join(folder, 'node_modules', 'kinfonds', manifest.bin.kinfonds);
    // The links lead back here, where more is installed; without them followed, only what is linked is found.
    const node = ['--preserve-symlinks', '--preserve-symlinks-main', main];
    return spawnSync(process.execPath, [...node, ...args], { cwd: folder, encoding: 'utf8' });
  };

  test('holds what is needed', () => {
    for (const path of [
      'package.json',
      'README.md',
      'LICENSE',
      'xsd/published.json',
      'examples/own-data.mjs',
    ])
      expect(files).toContain(path);
    for (const schema of readdirSync('xsd')) expect(files).toContain(`xsd/${schema}`);
    for (const page of readdirSync('docs', { recursive: true, encoding: 'utf8' }))
      if (page.includes('.')) expect(files).toContain(`docs/${page.replaceAll('\\', '/')}`);
    // The library is as tsc makes it, a file for each source; the command line is made of few files.
    const sources = readdirSync('src', { recursive: true, encoding: 'utf8' })
      .map((name) => name.replaceAll('\\', '/'))
      .filter((name) => name.endsWith('.ts') && !name.startsWith('cli/'));
    const library = files.filter((path) => path.startsWith('dist/') && !path.startsWith('dist/cli/'));
    expect(library.sort()).toEqual(
      sources
        .map((name) => `dist/${name.replace(/\.ts$/, '')}`)
        .flatMap((path) => [`${path}.d.ts`, `${path}.js`])
        .sort(),
    );
    const program = files.filter((path) => path.startsWith('dist/cli/'));
    expect(program).toContain('dist/cli/thread.js');
    expect(program.filter((path) => !path.endsWith('.js'))).toEqual([
      'dist/cli/commander-LICENSE',
      'dist/cli/yaml-LICENSE',
      'dist/cli/zod-LICENSE',
    ]);
    for (const path of [manifest.bin.kinfonds, manifest.types, manifest.exports['.'].default])
      expect(files).toContain(path.replace(/^\.\//, ''));
  });

  test('and no more: no tests, no sources, nothing that the program keeps for itself', () => {
    const folders = new Set(files.map((path) => (path.includes('/') ? path.split('/')[0] : path)));
    expect([...folders].sort()).toEqual([
      'LICENSE',
      'README.md',
      'dist',
      'docs',
      'examples',
      'package.json',
      'xsd',
    ]);
    expect(files.filter((path) => /(?:^|\/)\.|\.(?:test\.js|tsbuildinfo|tgz|map)$/.test(path))).toEqual([]);
    // Our own bound: what is installed in a minute over a slow line (1 Mbit/s is 7.5 MB).
    expect(sizes).toBeLessThan(7_500_000);
  });

  test('every page that the README links to is in it, but that for those who have the sources', () => {
    const links = [...readFileSync('README.md', 'utf8').matchAll(/\]\(([^)#:]+)(?:#[^)]*)?\)/g)];
    const paths = links.map(([, path = '']) => path).filter((path) => path !== 'DEVELOPERS.md');
    expect(paths.length).toBeGreaterThan(0);
    for (const path of paths)
      expect([
        path,
        files.some((file) => file === path || file.startsWith(`${path.replace(/\/$/, '')}/`)),
      ]).toEqual([path, true]);
  });

  test('works in an empty folder, with nothing but what it depends on', () => {
    expect(existsSync(join(folder, 'node_modules', 'vitest'))).toBe(false);
    const help = run('--help');
    expect([help.status, help.stderr]).toEqual([0, '']);
    expect(help.stdout).toContain('Usage: kinfonds');
    const example = join('node_modules', 'kinfonds', 'examples', 'quill-ferry');
    cpSync(join(folder, example), join(folder, 'quill'), { recursive: true });
    for (const args of [
      ['arrange', 'quill'],
      ['labels', 'quill', '--out', 'labels.pdf'],
      ['export', 'quill', '--to', 'all'],
      ['validate', 'quill/finding-aid/ead3.xml'],
      ['begin', 'rook', '--title', 'Rook family papers'],
    ]) {
      const { status, stderr } = run(...args);
      expect([args, status, status === 0 ? '' : stderr]).toEqual([args, 0, '']);
    }
  });

  test('is a library there', () => {
    const script = "import('kinfonds').then(({ displayDate }) => console.log(displayDate('1913-04-06')))";
    const { stdout } = spawnSync(process.execPath, ['-e', script], { cwd: folder, encoding: 'utf8' });
    // DACS 2.4.14.
    expect(stdout).toBe('1913 April 6\n');
    const inside = "import('kinfonds/dist/index.js').catch(({ code }) => console.log(code))";
    expect(spawnSync(process.execPath, ['-e', inside], { cwd: folder, encoding: 'utf8' }).stdout).toBe(
      'ERR_PACKAGE_PATH_NOT_EXPORTED\n',
    );
  });
});
