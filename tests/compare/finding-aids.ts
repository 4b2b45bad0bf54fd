import { type Component, component } from '../../src/catalogue/component.ts';
import { type FindingAid, findingAid } from '../../src/catalogue/finding-aid.ts';

/** A unit with what is given; `number` is its number in the list. */
export function unit(
  id: string,
  title: string,
  over: Record<string, unknown> & { number?: string } = {},
  children: readonly Component[] = [],
): Component {
  const { number, ...fields } = over;
  const otherIdentifiers = number === undefined ? [] : [{ type: 'number in the list', value: number }];
  return component.parse({ id, title, level: 'item', otherIdentifiers, ...fields, children });
}

/** A day as a statement of date. */
export const day = (edtf: string) => ({ dates: [{ expression: edtf, edtf }] });

/** A finding aid to the Quill family papers with these series. */
export function aid(children: readonly Component[], over: Record<string, unknown> = {}): FindingAid {
  return findingAid.parse({
    format: 'kinfonds finding aid',
    version: 1,
    control: {
      recordId: 'QF',
      title: 'Finding aid to the Quill family papers',
      maintenanceAgency: { name: 'Quill family' },
      languages: [{ code: 'eng', name: 'English' }],
      conventions: [{ citation: 'ISAD(G)' }],
      history: [{ type: 'created', date: '2026', agent: 'Nora Quill', agentType: 'human' }],
    },
    collection: unit('QF', 'Quill family papers', { level: 'collection', referenceCode: 'QF' }, children),
    ...over,
  });
}

/** A series of letters with these titles, whose ids are mere places: QF-1, QF-2. */
export const letters = (...titles: readonly string[]): FindingAid =>
  aid(titles.map((title, at) => unit(`QF-${at + 1}`, title, { referenceCode: `QF/${at + 1}` })));
