import { describe, expect, test } from 'vitest';
import type { FindingAid } from '../../src/catalogue/finding-aid.ts';
import { compareFindingAids, sayComparison } from '../../src/compare/index.ts';
import { aid, day, letters, unit } from './finding-aids.ts';

// How it should read was written by hand.

const said = (a: FindingAid, b: FindingAid) => [...sayComparison(compareFindingAids(a, b))];

const one = (was: Record<string, unknown>, now: Record<string, unknown>) =>
  said(aid([unit('u', 'Letter', was)]), aid([unit('u', 'Letter', now)])).slice(3);

test('a summary, then each part under a heading', () => {
  const a = aid(
    [
      unit('s1', 'Letters', { level: 'series', referenceCode: 'QF/1' }, [
        unit('i1', 'Letter from Ada', { referenceCode: 'QF/1/1', ...day('1911-05-02') }),
        unit('i2', 'Letter from Tom', { referenceCode: 'QF/1/2' }),
        unit('i3', 'Handbill of the ferry', { referenceCode: 'QF/1/3' }),
      ]),
      unit('s2', 'Ferry papers', { level: 'series', referenceCode: 'QF/2' }),
    ],
    { people: [{ id: 'p', type: 'family', name: 'Quill family' }] },
  );
  const b = aid(
    [
      unit('s1', 'Letters', { level: 'series', referenceCode: 'QF/1' }, [
        unit('i1', 'Letter from Ada Quill', { referenceCode: 'QF/1/1', ...day('1911-05-02') }),
      ]),
      unit('s2', 'Ferry papers', { level: 'series', referenceCode: 'QF/2' }, [
        unit('i3', 'Handbill of the ferry', { referenceCode: 'QF/2/1' }),
      ]),
      unit('s3', 'Recipes', { level: 'series', referenceCode: 'QF/3' }, [
        unit('i4', 'Apple butter', { referenceCode: 'QF/3/1' }),
      ]),
    ],
    { control: { ...a.control, author: 'Nora Quill' } },
  );
  expect(said(a, b)).toEqual([
    '2 units added, 1 unit removed, 1 unit moved, 1 unit changed, 1 change in people, 1 change in the finding aid itself.',
    '',
    'Added (2)',
    '  in QF  Quill family papers:',
    '    QF/3  Recipes',
    '      QF/3/1  Apple butter',
    '',
    'Removed (1)',
    '  in QF/1  Letters:',
    '    QF/1/2  Letter from Tom',
    '',
    'Moved (1)',
    '  from QF/1  Letters',
    '    to QF/2  Ferry papers:',
    '      QF/1/3 → QF/2/1  Handbill of the ferry',
    '',
    'Changed (1)',
    '  QF/1/1  Letter from Ada, 1911-05-02',
    '    Title: Letter from Ada → Letter from Ada Quill',
    '',
    'People (1)',
    '  removed: Quill family (family)',
    '',
    'The finding aid itself (1)',
    '  Author of the finding aid: added: Nora Quill',
  ]);
});

test('no difference', () => {
  expect(said(aid([]), aid([]))).toEqual(['No difference.']);
});

test('what only follows from a row put in is set apart, and not all of it named', () => {
  const titles = Array.from({ length: 30 }, (_, at) => `Letter no. ${at}`);
  const lines = said(letters(...titles), letters('Anchor', ...titles));
  expect(lines[0]).toBe('1 unit added, 30 units only with another reference code.');
  expect(lines.slice(7, 9)).toEqual(['  QF/1 → QF/2  Letter no. 0', '  QF/2 → QF/3  Letter no. 1']);
  expect(lines.at(-1)).toBe('  … and 10 more; --json shows all.');
});

test('what only lies elsewhere is set apart', () => {
  const shelf = (box: string) => ({
    containers: [
      { id: 'b', type: 'box', number: box },
      { type: 'folder', number: '4-6', parent: 'b' },
    ],
  });
  expect(said(aid([unit('u', 'Letter', shelf('1'))]), aid([unit('u', 'Letter', shelf('2'))]))).toEqual([
    '1 unit only lying elsewhere.',
    '',
    'Lying elsewhere (1)',
    '  Letter',
    '    Containers: box 1, folders 4-6 → box 2, folders 4-6',
  ]);
});

describe('values', () => {
  test('a long text by the part that changed', () => {
    const text = (count: string) =>
      `The account books of the ferry from the first crossing to the last. There are ${count} of them, and the one for 1922 is missing since the flood of 1936 in the landing house.`;
    expect(one({ scopeAndContent: text('eleven') }, { scopeAndContent: text('twelve') })).toEqual([
      '  Letter',
      '    Scope and content:',
      '      was  … crossing to the last. There are eleven of them, and the one for …',
      '      now  … crossing to the last. There are twelve of them, and the one for …',
    ]);
  });

  test('extents, dates, conditions, access points and notes as a reader would say them', () => {
    const was = {
      dates: [{ expression: '1911 May', edtf: '1911-05' }],
      extents: [{ type: 'materialtype', coverage: 'whole', quantity: 1, unit: 'letter' }],
      accessConditions: { statement: 'Open' },
      accessPoints: [{ type: 'subject', term: 'Floods' }],
      generalNotes: [{ text: 'In pencil.' }],
    };
    const now = {
      dates: [{ expression: '1911 June', edtf: '1911-06' }],
      extents: [{ type: 'materialtype', coverage: 'whole', quantity: 2, unit: 'letters', approximate: true }],
      accessConditions: { statement: 'Closed', until: '2040', restricted: true },
      accessPoints: [],
      generalNotes: [{ text: 'In pencil.' }, { head: 'Found in', text: 'Blue trunk' }],
    };
    expect(one(was, now)).toEqual([
      '  Letter, 1911 May',
      '    Date(s): 1911 May → 1911 June',
      '    Extent: 1 letter → about 2 letters',
      '    Conditions governing access: Open → Closed (until 2040; restricted)',
      '    Note: added: Found in: Blue trunk',
      '    Access points: removed: Floods (subject)',
    ]);
  });

  test('where the words for a reader are the same, all that differs is told', () => {
    const dated = (edtf: string) => ({ dates: [{ expression: 'about 1911', edtf }] });
    const lines = one(dated('1911~'), dated('1910/1912'));
    expect(lines.join('\n')).toContain('edtf: 1911~');
    expect(lines.join('\n')).toContain('edtf: 1910/1912');
  });
});
