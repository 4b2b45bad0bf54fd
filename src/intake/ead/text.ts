import { type Found, isElement } from './found.ts';

/** Elements within a line of text: what they hold goes on where the text before them ends. */
const INLINE = new Set(
  'emph ref extref title num foreign abbr expan quote date persname corpname famname name geogname subject genreform occupation function unitdate bibref archref term footnote'.split(
    ' ',
  ),
);
/** Links that hold no text: what is shown in their place, in this order. */
const SHOWN = ['xlink:title', 'linktitle', 'xlink:href', 'href'] as const;
const LINKS = new Set(['extptr', 'ptr']);

/** What the model counts as blank: neither a letter nor anything else that is seen. */
export const isSeen = (text: string | undefined): text is string =>
  text !== undefined && /[^\s\p{Cf}]/u.test(text);

/** The text of an element on one line, as a reader would see it; blank where there is none. */
export function words(element: Found): string {
  const only = element.children.length === 1 ? element.children[0] : undefined;
  const text = typeof only === 'string' ? only : flat(element);
  if (isTidy(text)) return text;
  const line = text.replace(/[ \t\r\n]+/g, ' ').replace(/^ | $/g, '');
  return isSeen(line) ? line : '';
}

/** Whether a text is plain English with single blanks between its words; most are, and are told so in one look. */
function isTidy(text: string): boolean {
  let before = BLANK;
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (code < BLANK || code >= DELETE || (code === BLANK && before === BLANK)) return false;
    before = code;
  }
  return before !== BLANK;
}

const [BLANK, DELETE] = [0x20, 0x7f];

function flat({ children }: Found): string {
  let text = '';
  for (const child of children) {
    if (!isElement(child)) text += child;
    else if (LINKS.has(child.name)) text += SHOWN.map((key) => child.attributes[key]).find(Boolean) ?? '';
    else if (!INLINE.has(child.name)) text += ` ${flat(child)} `;
    else {
      const inside = flat(child);
      text += partsWords(child.name, text, inside) ? ` ${inside}` : inside;
    }
  }
  return text;
}

/** A mark may begin within a word; a number or a name may not, and needs a blank where it touches another word. */
export const partsWords = (name: string, before: string, after: string): boolean =>
  !MARKS.has(name) && /[\p{L}\p{N}]$/u.test(before) && /^[\p{L}\p{N}]/u.test(after);

const MARKS = new Set(['emph', 'foreign', 'abbr', 'expan', 'ref', 'extref', 'footnote']);

/** The text of an element, or undefined where there is none. */
export const lineOf = (element: Found | undefined): string | undefined =>
  (element && words(element)) || undefined;

/** Elements that hold paragraphs and the like, each of which is looked into. */
const BLOCKS = new Set(
  (
    'list chronlist table tgroup tbody thead index bibliography chronitemset eventgrp namegrp blockquote note footnote ' +
    'descriptivenote daodesc scopecontent bioghist arrangement odd accessrestrict userestrict acqinfo custodhist ' +
    'processinfo appraisal accruals altformavail originalsloc otherfindaid phystech prefercite relatedmaterial ' +
    'separatedmaterial fileplan legalstatus descgrp admininfo add organization controlnote listhead linkgrp ptrgrp'
  ).split(' '),
);
/** Elements that are one line of a list or table, their parts set apart by the mark. */
const ROWS: Readonly<Record<string, string>> = {
  ...{ chronitem: ': ', defitem: ': ', row: ' | ', indexentry: ': ', listhead: ': ' },
};

/** The paragraphs of an element in reading order: those of lists and tables within it too, a line of them each. */
export function paragraphsOf(element: Found, skip: (child: Found) => boolean = () => false): string[] {
  const found: string[] = [];
  let loose: (Found | string)[] = [];
  const flush = () => {
    const text = loose.length === 0 ? '' : words({ ...element, children: loose });
    if (text !== '') found.push(text);
    loose = [];
  };
  for (const child of element.children) {
    if (!isElement(child) || INLINE.has(child.name) || child.name === 'lb' || LINKS.has(child.name)) {
      loose.push(child);
      continue;
    }
    flush();
    if (skip(child)) continue;
    const apart = ROWS[child.name];
    if (apart !== undefined) found.push(...row(child, apart));
    else if (BLOCKS.has(child.name)) found.push(...paragraphsOf(child));
    else found.push(...paragraph(child));
  }
  flush();
  return found;
}

/** A paragraph or an item; a list within it stands below it. */
function paragraph(element: Found): string[] {
  const below = element.children.filter((child) => isElement(child) && BLOCKS.has(child.name));
  if (below.length === 0) return [words(element)].filter((text) => text !== '');
  return paragraphsOf({ ...element, name: 'p' });
}

function row(element: Found, apart: string): string[] {
  const cells = element.children
    .filter(isElement)
    .map((cell) => (BLOCKS.has(cell.name) ? paragraphsOf(cell).join('; ') : words(cell)))
    .filter((text) => text !== '');
  return cells.length === 0 ? [] : [cells.join(apart)];
}

/** The running text of an element, its heading left out; undefined where there is none. */
export function proseOf(element: Found, skip: (child: Found) => boolean = () => false): string | undefined {
  const first = element.children.find(isElement);
  const paragraphs = paragraphsOf(
    element,
    (child) => (child.name === 'head' && child === first) || skip(child),
  );
  return paragraphs.length === 0 ? undefined : paragraphs.join('\n\n');
}
