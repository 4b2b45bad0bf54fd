import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { kinfonds } from './support/kinfonds.ts';

const DOCUMENTS = [
  'README.md',
  'DEVELOPERS.md',
  ...readdirSync('docs')
    .filter((name) => name.endsWith('.md'))
    .map((name) => join('docs', name)),
];

const helps = new Map<string, string>();

/** The help of a command; none where there is no such command. */
function helpOf(command: string): string | undefined {
  const known = helps.get(command);
  if (known !== undefined) return known;
  const { code, out } = kinfonds([command, '--help']);
  if (code !== 0) return undefined;
  helps.set(command, out);
  return out;
}

/** Everything that a document tells its reader to type. */
const commandsIn = (text: string): string[] =>
  [...text.matchAll(/(?:`|^)kinfonds +([^`\n]+)/gm)].map(([, typed = '']) => typed.trim());

describe.each(DOCUMENTS)('%s', (file) => {
  const text = readFileSync(file, 'utf8');

  test('names only commands and options that there are', () => {
    for (const typed of commandsIn(text)) {
      const [command = '', ...words] = typed.split(/\s+/);
      const help = helpOf(command);
      expect([typed, help === undefined]).toEqual([typed, false]);
      for (const word of words) if (/^--[a-z]/.test(word)) expect(help).toContain(word);
    }
  });

  test('links only to files that there are', () => {
    for (const [, target = ''] of text.matchAll(/\]\(([^)#]+)(?:#[^)]*)?\)/g)) {
      if (!/^https?:/.test(target))
        expect([target, existsSync(join(dirname(file), target))]).toEqual([target, true]);
    }
  });
});
