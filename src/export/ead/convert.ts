import { type EadVersion, elementsOf, type Found, isElement } from '../../intake/ead/found.ts';
import { partsWords, words } from '../../intake/ead/text.ts';
import { CONVERSIONS, type ConversionRow, TEXT_SETS } from './conversions.ts';
import { convertedAttributes } from './convert-attributes.ts';

const BLOCKS = ['head', 'p', 'list', 'chronlist', 'blockquote'];
const NAMES = ['persname', 'famname', 'corpname', 'name'];
const TERMS = [...NAMES, 'geogname', 'subject', 'genreform', 'occupation', 'function', 'title'];

/** Which elements may stand in one that holds no text, in both versions; any other note holds blocks and its like. */
const HOLDS: Readonly<Record<string, readonly string[]>> = {
  list: ['head', 'item', 'defitem', 'listhead'],
  defitem: ['label', 'item'],
  listhead: ['head01', 'head02'],
  chronlist: ['head', 'chronitem'],
  blockquote: ['p', 'list', 'chronlist'],
  controlaccess: [...BLOCKS, ...TERMS, 'controlaccess'],
  origination: NAMES,
  titlestmt: ['titleproper', 'subtitle', 'author', 'sponsor'],
  dsc: [...BLOCKS, 'c'],
};
/** Running text may hold these beside words; in EAD3 the others stand beside the paragraph. */
const IN_RUNNING_TEXT: Readonly<Record<EadVersion, ReadonlySet<string>>> = {
  ead2002: new Set(['list', 'chronlist', 'blockquote']),
  ead3: new Set(['list']),
};
const RUNNING = new Set(['p', 'item', 'event']);
/** What holds a name or a term has parts in EAD3. */
const IN_PARTS = new Set(TERMS);
const COUNTED = new Set(['extent', 'dimensions', 'physfacet']);
const WRAPPERS = new Set(['descgrp', 'admininfo', 'add']);

const rowsBy = (key: EadVersion) => new Map(CONVERSIONS.map((row) => [row[key], row]));
const ROWS: Readonly<Record<EadVersion, ReadonlyMap<string, ConversionRow>>> = {
  ead2002: rowsBy('ead2002'),
  ead3: rowsBy('ead3'),
};

/**
 * An element of one version of EAD as the other tells it: none, one, or several in its place. Marks in a text that the
 * other has no element for go, and their words stay.
 * @returns undefined where the other version tells this in quite another way
 */
export function converted(element: Found, to: EadVersion): Found[] | undefined {
  const from = to === 'ead3' ? 'ead2002' : 'ead3';
  if (WRAPPERS.has(element.name)) {
    const inside = elementsOf(element).filter(({ name }) => name !== 'head');
    return all(inside, to);
  }
  // What is counted is told in a structure of its own.
  if (element.name === 'physdesc' && elementsOf(element).some(({ name }) => COUNTED.has(name)))
    return undefined;
  if (element.name === 'chronitem') return chronItem(element, to);
  if (element.name === 'p' && to === 'ead3' && element.children.some(standsBeside)) return parted(element);
  if (element.name === 'didnote') return [note(element, to)];
  const row = rowOf(element, from);
  if (row === undefined) return undefined;
  const made = { name: row[to], attributes: convertedAttributes(element, row, to) };
  const { text } = row;
  if (text === undefined) {
    const children = held(element, to);
    return children && [{ ...made, children }];
  }
  const set = IN_PARTS.has(element.name) && to === 'ead3' ? TEXT_SETS.basic3 : TEXT_SETS[text[to]];
  const children = inText(element, to, set);
  if (children === undefined) return undefined;
  if (!IN_PARTS.has(element.name) || to === 'ead2002') return [{ ...made, children }];
  return [{ ...made, children: [{ name: 'part', attributes: {}, children }] }];
}

const standsBeside = (child: Found | string) =>
  isElement(child) && (child.name === 'chronlist' || child.name === 'blockquote');

/** A paragraph of EAD 2002 that holds what stands between two paragraphs in EAD3. */
function parted({ attributes, children }: Found): Found[] | undefined {
  const parts: Found[] = [];
  let text: (Found | string)[] = [];
  const flush = () => {
    const isBlank = text.every((child) => !isElement(child) && child.trim() === '');
    if (!isBlank) parts.push({ name: 'p', attributes: parts.length === 0 ? attributes : {}, children: text });
    text = [];
  };
  for (const child of children) {
    if (!isElement(child) || !standsBeside(child)) text.push(child);
    else {
      flush();
      parts.push(child);
    }
  }
  flush();
  return all(parts, 'ead3');
}

/** A link of EAD3 leads within the file or out of it; EAD 2002 has an element for each. */
function rowOf({ name, attributes }: Found, from: EadVersion): ConversionRow | undefined {
  const leadsOut = from === 'ead3' && attributes.href !== undefined;
  if (leadsOut && (name === 'ref' || name === 'ptr')) return ROWS.ead2002.get(`ext${name}`);
  return ROWS[from].get(name);
}

function all(elements: readonly Found[], to: EadVersion): Found[] | undefined {
  const made = elements.map((element) => converted(element, to));
  return made.every((one) => one !== undefined) ? made.flat() : undefined;
}

/** The children of an element that holds no text. */
function held(element: Found, to: EadVersion): Found[] | undefined {
  const allowed = HOLDS[element.name] ?? [...BLOCKS, element.name];
  const children = elementsOf(element);
  const loose = element.children.some((child) => !isElement(child) && child.trim() !== '');
  if (loose || children.some(({ name }) => !allowed.includes(name))) return undefined;
  return all(children, to);
}

function inText(element: Found, to: EadVersion, allowed: readonly string[]): (Found | string)[] | undefined {
  const children: (Found | string)[] = [];
  const parts = IN_PARTS.has(element.name) ? elementsOf(element, 'part') : [];
  for (const child of element.children) {
    if (!isElement(child)) children.push(child);
    else if (child.name === 'part') {
      if (child !== parts[0]) children.push(NAMES.includes(element.name) ? ', ' : ' -- ');
      children.push(...(inText(child, to, allowed) ?? [words(child)]));
    } else {
      const row = rowOf(child, to === 'ead3' ? 'ead2002' : 'ead3');
      const isBlock = RUNNING.has(element.name) && IN_RUNNING_TEXT[to].has(child.name);
      if (isBlock || (row !== undefined && allowed.includes(row[to]))) {
        const made = converted(child, to);
        if (made === undefined) return undefined;
        children.push(...made);
      } else {
        const inside = unwrapped(child, to, allowed);
        const [before, after] = [children.at(-1), inside[0]];
        if (typeof before === 'string' && typeof after === 'string' && partsWords(child.name, before, after))
          children.push(' ');
        children.push(...inside);
      }
    }
  }
  return children;
}

/** The words of an element that cannot stand here, with those of the marks in them that can. */
function unwrapped(element: Found, to: EadVersion, allowed: readonly string[]): (Found | string)[] {
  if (element.name === 'lb') return [' '];
  if (element.children.length === 0) return [words({ name: '', attributes: {}, children: [element] })];
  return inText(element, to, allowed) ?? [words(element)];
}

/** A line of a chronology: a date, and what happened. */
function chronItem(element: Found, to: EadVersion): Found[] | undefined {
  const [date, ...events] = elementsOf(element);
  if (date === undefined || events.length === 0) return undefined;
  const group = events.flatMap((event) => (isGroup(event) ? elementsOf(event) : [event]));
  if (group.some(({ name }) => name !== 'event')) return undefined;
  const made = all(group, to);
  if (made === undefined) return undefined;
  const [first] = made;
  const name = to === 'ead3' ? 'chronitemset' : 'eventgrp';
  const happened =
    made.length === 1 && first !== undefined ? first : { name, attributes: {}, children: made };
  const said = date.name === 'daterange' ? elementsOf(date).map(words).join('-') : words(date);
  const when: Found = { name: to === 'ead3' ? 'datesingle' : 'date', attributes: {}, children: [said] };
  return [{ name: 'chronitem', attributes: {}, children: [when, happened] }];
}

const isGroup = ({ name }: Found) => name === 'eventgrp' || name === 'chronitemset';

/** EAD3 has a line of text where EAD 2002 has paragraphs. */
function note(element: Found, to: EadVersion): Found {
  const row: ConversionRow = { ead2002: 'note', ead3: 'didnote', attributes: NOTE_ATTRIBUTES };
  const children = inText(element, to, TEXT_SETS.plus2002) ?? [words(element)];
  return {
    name: 'note',
    attributes: convertedAttributes(element, row, to),
    children: [{ name: 'p', attributes: {}, children }],
  };
}

const NOTE_ATTRIBUTES = { type: 'localtype', label: 'label', encodinganalog: 'encodinganalog' };
