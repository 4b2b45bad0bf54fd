import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, posix } from 'node:path';
import { expect, test } from 'vitest';

const PAGE = readFileSync('DEVELOPERS.md', 'utf8');
/** The rooms in the order of the table in DEVELOPERS.md. */
const ROOMS = [...PAGE.matchAll(/^\| `src\/([a-z]+)\/` \|/gm)].map(([, room = '']) => room);
/** Files that look ahead, as DEVELOPERS.md names them. */
const AHEAD = /^catalogue\/(?:load|find-list|preview|begin(?:-[a-z]+)?|traces)\.ts$/;

const roomOf = (path: string) => path.split('/')[0] ?? '';

/** What a file imports from within `src/`, at the start or when it is needed. */
function importsOf(file: string): string[] {
  const code = readFileSync(join('src', file), 'utf8');
  return [...code.matchAll(/(?:from|import\()\s*'(\.[^']+)'/g)].map(([, path = '']) =>
    posix.join(dirname(file), path),
  );
}

const files = readdirSync('src', { recursive: true, encoding: 'utf8' })
  .map((name) => name.replaceAll('\\', '/'))
  .filter((name) => name.endsWith('.ts') && name.includes('/'));

test('the table in DEVELOPERS.md has every room', () => {
  expect([...ROOMS].sort()).toEqual([...new Set(files.map(roomOf))].sort());
});

test('each room knows only the rooms before it', () => {
  const ahead = files.flatMap((file) =>
    importsOf(file)
      .filter((path) => ROOMS.indexOf(roomOf(path)) > ROOMS.indexOf(roomOf(file)))
      .map((path) => `${file} imports ${path}`),
  );
  expect(ahead.filter((said) => !AHEAD.test(said.split(' ')[0] ?? ''))).toEqual([]);
  // The exceptions are needed.
  expect(ahead.length).toBeGreaterThan(0);
});
