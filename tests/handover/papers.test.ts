import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { arrangement, settle } from '../../src/arrange/index.ts';
import type { Thing } from '../../src/catalogue/thing.ts';
import { packageFiles } from '../../src/handover/package-files.ts';
import { paperToMarkdown } from '../../src/handover/papers/markdown.ts';
import { paperToPage } from '../../src/handover/papers/page.ts';
import { heading, lines, list, type Paper, text, ticks } from '../../src/handover/papers/paper.ts';
import { plainLetters } from '../../src/handover/plain-letters.ts';
import { printed } from '../../src/handover/printed.ts';
import { review } from '../../src/review/index.ts';
import { dated, someCatalogue, someThing } from '../support/catalogue.ts';
import { nastyText } from '../support/hostile-text.ts';
import { faults } from '../support/html-faults.ts';
import { SETTINGS } from './on-disk.ts';

/** A paper with the same text in every place where one can stand. */
const paperOf = (words: string): Paper => ({
  title: words,
  blocks: [
    heading(words),
    text(words),
    list(words),
    ticks(words),
    lines(words),
    { kind: 'table', headings: [words], rows: [[words]], ticked: true },
  ],
});

const filesOf = (over: Record<string, unknown> = {}, title = 'Bea to Tom on the thaw') => {
  const catalogue = {
    ...someCatalogue({ ...SETTINGS, ...over }, [
      someThing({ row: 2, title, kind: 'letter', date: dated('1962') }),
      someThing({ row: 3, title: 'Report', kind: 'letter', access: 'private', until: dated('2050') }),
    ]),
  };
  const { files } = packageFiles(catalogue, [], [], '2026-03-01');
  const content = (path: string) => {
    const found = files.find((file) => file.path === path)?.content ?? '';
    return typeof found === 'string' ? found : [...found].join('');
  };
  return { files, content };
};

describe('papers', () => {
  test('nothing in a text becomes markup of a page, and the page is valid HTML', async () => {
    fc.assert(
      fc.property(nastyText, (words) => {
        const page = paperToPage(paperOf(words));
        expect(page).not.toMatch(/<script|<img|<b>|onerror=(?!&)["']?[^&]*>/i);
        const count = (tag: string) => page.split(`<${tag}`).length;
        const plain = paperToPage(paperOf('a'));
        for (const tag of ['h1', 'h2', 'li', 'td', 'th'])
          expect(count(tag)).toBe(plain.split(`<${tag}`).length);
      }),
    );
    expect(await faults(paperToPage(paperOf('<script>alert("1 & 2")</script>')))).toEqual([]);
  });

  test.each([
    // CommonMark 0.31, sections 4 and 6: what each would be if it were not taken for text.
    ['*emphasis* and __strong__', '\\*emphasis\\* and \\_\\_strong\\_\\_'],
    ['a [link](javascript:alert(1))', 'a \\[link\\](javascript:alert(1))'],
    ['<script>', '\\<script\\>'],
    ['&copy; 1950', '\\&copy; 1950'],
    ['# no heading', '\\# no heading'],
    ['1950. A good year', '1950\\. A good year'],
    ['18.42 linear feet', '18.42 linear feet'],
    ['- no list\n- of two', '\\- no list - of two'],
    ['a | b', 'a \\| b'],
    ['Q & A, 3 < 4', 'Q & A, 3 \\< 4'],
  ])('in Markdown, %j stays text', (words, written) => {
    const [, , first] = paperToMarkdown({ title: 'T', blocks: [text(words)] }).split('\n');
    expect(first).toBe(written);
  });

  test('each that could be taken for a contract says that it is no legal advice, and who decides', () => {
    const { content } = filesOf();
    for (const name of ['letter-of-offer', 'deed-of-gift-checklist', 'receipt'])
      for (const form of ['md', 'html']) {
        const words = content(`${name}.${form}`);
        expect(words).toContain('no legal advice');
        expect(words).toMatch(/form of the archive itself, and where there is doubt a lawyer, decide/);
      }
  });

  test('the checklist has what a deed of gift is about', () => {
    const words = filesOf().content('deed-of-gift-checklist.md');
    for (const point of [
      'owns',
      'right to publish',
      'restriction',
      'would not keep',
      'comes back to the family',
    ])
      expect(words).toContain(point);
  });

  test('the letter names the recipient, the amount and the restrictions', () => {
    const recipient = { name: 'Osier County Historical Society', address: ['12 Mill Street'] };
    const words = filesOf({ recipient }).content('letter-of-offer.md');
    for (const said of [recipient.name, '12 Mill Street', '2 things', 'Report: private (until 2050)'])
      expect(words).toContain(said);
  });

  test('the letter does not say that no end is given beside words that name one', () => {
    const restricted = ['closed until 2060', 'closed for 75 years', 'closed'].map((access, at) =>
      someThing({ row: at + 2, title: `Report ${at}`, kind: 'letter', access }),
    );
    const { files } = packageFiles(someCatalogue(SETTINGS, restricted), [], [], '2026-03-01');
    const words = String(files.find(({ path }) => path === 'letter-of-offer.md')?.content);
    expect(words).toMatch(/Report 0: closed until 2060$/m);
    expect(words).toMatch(/Report 1: closed for 75 years$/m);
    expect(words).toMatch(/Report 2: closed \(no end is given\)$/m);
  });

  test('the letter tells dangers to the archive that reads it', () => {
    const dangerous = [
      someThing({ row: 2, title: 'Letters', kind: 'letters', condition: 'mouldy' }),
      someThing({ row: 3, title: 'Reel of the ferry', kind: 'film reel', date: dated('1937') }),
    ];
    const catalogue = someCatalogue(SETTINGS, dangerous);
    const found = review(catalogue, arrangement(catalogue, '2026-03-01'), undefined, '2026-03-01').findings;
    const { files } = packageFiles(catalogue, [], found, '2026-03-01');
    const content = files.find(({ path }) => path === 'letter-of-offer.md')?.content;
    const words = typeof content === 'string' ? content : '';
    expect(words).toContain('Mould or damp: “Letters”');
    expect(words).toContain('Please tell us before it comes to you whether you take it');
    expect(words).toMatch(/have it sent by post.*Please tell us before it is moved whether you may take it/);
    expect(words).not.toContain('receiving archive');
    expect(words).not.toContain('column “size”');
  });

  test('all pages are valid HTML that fetches nothing', async () => {
    const { files, content } = filesOf();
    const pages = files.filter(({ path }) => /^[^/]+\.html$/.test(path));
    expect(pages).toHaveLength(4);
    for (const { path } of pages) {
      expect([path, await faults(content(path))]).toEqual([path, []]);
      expect(content(path)).toContain('default-src &#39;none&#39;');
      expect(content(path)).not.toMatch(/ (?:src|href)=/);
    }
  });
});

const LOOSE = 'numbers of folders and boxes, and codes, need not be those on the things. Go by titles.';
const PENCILLED = 'The codes are meant to be on the folders in pencil.';

/** The papers of a package of some things, each text on one line. */
function papersOf(things: readonly Partial<Thing>[], isSettled: boolean) {
  const list = things.map((thing, at) => someThing({ row: at + 2, number: `${at + 1}`, ...thing }));
  const catalogue = someCatalogue(SETTINGS, list);
  const settled = isSettled ? settle(catalogue, false, '2026-03-01').rows : [];
  const { files } = packageFiles({ ...catalogue, settled }, [], [], '2026-03-01');
  return (path: string): string => {
    const content = files.find((file) => file.path === path)?.content ?? '';
    return (typeof content === 'string' ? content : [...content].join('')).replace(/\s+/g, ' ');
  };
}

describe('numbers', () => {
  const PAPERS = ['READ-ME-FIRST.txt', 'inventory.html', 'receipt.html', 'receipt.md'];

  test('where they were not fixed, each paper that gives them says so', () => {
    const words = papersOf([{ title: 'Bea to Tom', kind: 'letter' }], false);
    for (const paper of PAPERS)
      expect([paper, words(paper)]).toEqual([paper, expect.stringContaining(LOOSE)]);
    expect(words('READ-ME-FIRST.txt')).not.toContain(PENCILLED);
  });

  test('where they were, none does', () => {
    const words = papersOf([{ title: 'Bea to Tom', kind: 'letter' }], true);
    for (const paper of PAPERS) expect(words(paper)).not.toContain(LOOSE);
    expect(words('READ-ME-FIRST.txt')).toContain(PENCILLED);
  });

  test('the receipt says what a number means that is not there', () => {
    expect(papersOf([{ title: 'Bea to Tom', kind: 'letter' }], true)('receipt.md')).toContain(
      'Numbers that are missing here do not belong to what is handed over.',
    );
  });
});

test('the inventory marks what is not to be boxed, and the folder in which such a thing lies', () => {
  const words = papersOf(
    [
      { title: 'Live .303 round', kind: 'object' },
      { title: 'Nils to Ada', kind: 'letter', condition: 'mouldy' },
      { title: 'Ada to Nils', kind: 'letter', date: dated('1950') },
    ],
    true,
  );
  const caution = 'not to be boxed before somebody has looked at it';
  expect(words('inventory.html')).toContain(`Live .303 round (${caution}: ammunition)`);
  expect(words('inventory.html')).toContain(`(in it “Nils to Ada” (no. 2, row 3), ${caution}: mould)`);
  const csv = words('inventory.csv');
  expect(csv).toContain('things,caution,received');
  expect(csv).toContain(`,${caution}: ammunition,`);
  // Of the three, the letter of 1950 is in a folder of its own.
  expect(csv.split(caution)).toHaveLength(3);
});

test('the inventory leaves the number open where nobody has counted, and says where a bundle goes on', () => {
  const words = papersOf(
    [
      { title: 'Nils to Ada', kind: 'letters', date: dated('1920') },
      { title: 'Tolls', kind: 'receipts', quantityUnread: true, date: dated('1921') },
      { title: 'Ferry times', kind: 'receipts', quantity: 9000, date: dated('1922') },
    ],
    true,
  );
  const csv = words('inventory.csv');
  const countsOf = (year: number) =>
    Array.from(csv.matchAll(RegExp(`,${year},([^,]*),`, 'g')), ([, count]) => count);
  expect([1920, 1921].map(countsOf)).toEqual([[''], ['']]);
  const [all, ...rest] = countsOf(1922);
  expect(all).toBe('9000');
  expect(rest.length).toBeGreaterThan(0);
  expect(new Set(rest)).toEqual(new Set(['goes on from before']));
});

describe('READ-ME-FIRST.txt', () => {
  const NAMES = {
    title: 'Familien Nygård — “Østre” papers',
    repository: { name: 'Åse Łukasz', address: ['Hollin Ferry'] },
  };

  test('is in letters that any machine can show, in lines that fit on any screen', () => {
    const words = filesOf(NAMES, 'Kåre til Þóra, ½ side').content('READ-ME-FIRST.txt');
    expect(words).toMatch(/^[\x20-\x7E\n]*$/);
    expect(words).toContain('FAMILIEN NYGARD - "OSTRE" PAPERS');
    expect(words).toContain('Ase Lukasz');
    for (const line of words.split('\n')) expect(line.length).toBeLessThanOrEqual(76);
  });

  test('names every file beside it, and how to check them', () => {
    const { files, content } = filesOf();
    const words = content('READ-ME-FIRST.txt').replace(/\s+/g, ' ');
    const tops = new Set(files.map(({ path }) => path.split('/')[0] ?? ''));
    for (const top of tops) expect(words).toContain(top.replace(/\.(?:md|html|csv)$/, ''));
    const forms = files.flatMap(({ path }) => path.match(/^finding-aid\/([^/]+)/)?.[1] ?? []);
    for (const form of new Set(forms)) expect(words).toContain(form);
    expect(words).toContain('sha512sum -c manifest-sha512.txt');
    expect(words).toContain('UTF-8');
  });

  test('what has no plain form stays, rather than to be lost', () => {
    expect(plainLetters('渡し船 and Ærø')).toBe('渡し船 and AEro');
    expect(plainLetters('2½ miles × 3')).toBe('2 1/2 miles x 3');
  });

  test('no word is lost where lines are broken', () => {
    fc.assert(
      fc.property(fc.array(fc.stringMatching(/^[a-z]{1,90}$/), { minLength: 1, maxLength: 60 }), (words) => {
        const out = printed([`  - ${words.join(' ')}`]);
        expect(out.slice(4).trim().split(/\s+/)).toEqual(words);
        for (const line of out.trimEnd().split('\n').slice(1)) expect(line.startsWith('    ')).toBe(true);
      }),
    );
  });
});

// Common practice: what is restricted is seen to be so before it is opened.
test('the inventory marks what is restricted, and a folder with some of it', () => {
  const words = papersOf(
    [
      { title: 'Nils to Ada', kind: 'letter', date: dated('1931'), access: 'private' },
      { title: 'Ada to Nils', kind: 'letter', date: dated('1931') },
      { title: 'Bea to Tom', kind: 'letter', date: dated('1940'), access: 'private' },
      { title: 'Tom to Bea', kind: 'letter', date: dated('1950') },
    ],
    true,
  );
  const cautions = words('inventory.csv').match(/restricted(?: in part)?/g);
  expect(cautions).toEqual(['restricted in part', 'restricted']);
  expect(words('inventory.html')).toContain('(restricted in part)');
});
