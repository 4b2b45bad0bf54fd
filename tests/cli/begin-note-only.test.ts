import { existsSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { freshFolder, kinfonds } from '../support/kinfonds.ts';

const LIST = 'title,date,note\nFerry log,1931,\n,,The trunk came from Nils\n';

/** A folder with a list in which a row holds a remark and no thing. */
function folderWithList(list = LIST): string {
  const cwd = freshFolder();
  writeFileSync(join(cwd, 'kept.csv'), list);
  return cwd;
}

describe('a row that holds a remark and no thing', () => {
  test.each([
    ['begin --from', ['begin', 'rook', '--from', 'kept.csv', '--title', 'Rook papers']],
    ['begin --preview', ['begin', 'rook', '--preview', '--from', 'kept.csv']],
  ])('is told by %s, with where the remark goes', (_, args) => {
    const { code, err } = kinfonds(args, { cwd: folderWithList() });
    expect(code).toBe(1);
    expect(err).toMatch(/^must .*row 3, column title: .*“The trunk came from Nils”/m);
    expect(err).toMatch(/collection\.yaml, under “notes” or “history”/);
  });

  test.each([
    ['begin --from', ['begin', 'rook', '--from', 'kept.csv', '--title', 'Rook papers', '--json']],
    ['begin --preview', ['begin', 'rook', '--preview', '--from', 'kept.csv', '--json']],
  ])('is told by %s --json too, and by how it ends', (_, args) => {
    const { code, out } = kinfonds(args, { cwd: folderWithList() });
    expect(code).toBe(1);
    const rules = JSON.parse(out).findings.map(({ rule }: { rule: string }) => rule);
    expect(rules).toContain('list.no-title');
  });

  test('leaves the catalogue made, and says what comes first', () => {
    const cwd = folderWithList();
    const { out } = kinfonds(['begin', 'rook', '--from', 'kept.csv', '--title', 'Rook papers'], { cwd });
    expect(existsSync(join(cwd, 'rook', 'list.csv'))).toBe(true);
    expect(out).toContain('Before it can be arranged');
  });

  test('without one, all is well', () => {
    const cwd = folderWithList(LIST.replace(/,,The.*\n/, ''));
    const { code, out } = kinfonds(['begin', 'rook', '--from', 'kept.csv', '--title', 'R'], { cwd });
    expect([code, out.includes('Before it can be arranged')]).toEqual([0, false]);
  });
});
