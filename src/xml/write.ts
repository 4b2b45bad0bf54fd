import type { Written, XmlElement, XmlNode } from './element.ts';
import { type Forms, formsOf, onLine } from './forms.ts';
import { isPlainText, isPlainValue, safe } from './safe.ts';

const DECLARATION = '<?xml version="1.0" encoding="UTF-8"?>';
/** Size of a chunk in UTF-16 units: large enough that handing it on costs little, small enough to keep memory flat. */
const CHUNK = 65_536;

/** An element that is being written: its start tag is, its end tag is not yet. */
interface Frame {
  element: XmlElement;
  forms: Forms;
  /** The children where they are an array, and how many of them have been taken. */
  list: readonly XmlNode[] | undefined;
  taken: number;
  /** The children where they are a lazy list, the name of the last one taken, and how many of it came in a row. */
  lazy: Iterator<XmlNode> | undefined;
  last: string;
  inRow: number;
  /** Mixed content, or within it: every blank counts there, so none may be added. */
  inline: boolean;
  /** The `>` of the start tag is still to come, since the element may yet turn out to be empty. */
  unclosed: boolean;
}

/** What has been written since the last chunk, in pieces: joining many at once is cheaper than adding one by one. */
interface Page {
  pieces: string[];
  length: number;
}

function put(page: Page, piece: string): void {
  page.pieces.push(piece);
  page.length += piece.length;
}

/**
 * Writes a tree as an XML 1.0 document in UTF-8, in chunks of about 64 KB of text. The same tree gives the same text.
 * An element that holds any text is written on one line with all that is in it; everywhere else each element stands on
 * a line of its own, indented by two spaces a level.
 * @throws Error for a character that XML forbids (section 2.2), a name that is none (2.3), or a text in a lazy list;
 * the message gives the path of the element
 */
export function* writeXml(root: XmlElement): Generator<string, void, undefined> {
  const stack: Frame[] = [];
  const page: Page = { pieces: [DECLARATION], length: DECLARATION.length };
  try {
    begin(page, root, stack);
    while (stack.length > 0) {
      fill(page, stack);
      if (stack.length === 0) break;
      yield page.pieces.join('');
      page.pieces = [];
      page.length = 0;
    }
    put(page, '\n');
    yield page.pieces.join('');
  } finally {
    // Whoever stops reading half-way also stops the lists that are being pulled.
    for (const { lazy } of stack) lazy?.return?.();
  }
}

/** Goes on writing until a page is full or the root is closed. */
function fill(page: Page, stack: Frame[]): void {
  while (stack.length > 0 && page.length < CHUNK) goOn(page, stack);
}

/** Writes the next child, or the end of the element where there is no further one. */
function goOn(page: Page, stack: Frame[]): void {
  const frame = stack.at(-1);
  if (frame === undefined) return;
  const child = take(frame, stack);
  if (child === undefined) {
    stack.pop();
    endTag(page, frame, stack.length);
  } else if (child !== '') {
    if (frame.unclosed) put(page, '>');
    frame.unclosed = false;
    if (typeof child === 'string') {
      put(
        page,
        safe(child, 'text', () => `The text of ${path(stack)}`),
      );
    } else if (child.shared !== undefined && !frame.inline) putShared(page, child, child.shared, stack);
    else begin(page, child, stack);
  }
}

/** Writes an element that stands in many places. From the second time on, at the same depth, its text is at hand. */
function putShared(page: Page, element: XmlElement, last: Written, stack: Frame[]): void {
  const depth = stack.length;
  if (last.depth !== depth) {
    last.depth = depth;
    last.text = '';
    begin(page, element, stack);
    return;
  }
  if (last.text === '') {
    const own: Page = { pieces: [], length: 0 };
    begin(own, element, stack);
    while (stack.length > depth) goOn(own, stack);
    last.text = own.pieces.join('');
  }
  put(page, last.text);
}

/** The next child, or undefined where there is no further one. */
function take(frame: Frame, stack: readonly Frame[]): XmlNode | undefined {
  const { list, lazy } = frame;
  if (list !== undefined) return list[frame.taken++];
  const next = lazy?.next();
  if (next === undefined || next.done === true) {
    frame.lazy = undefined;
    return undefined;
  }
  if (typeof next.value === 'string') {
    throw new Error(
      `The children of ${path(stack)} are a lazy list and hold a text; mixed content has to be an array.`,
    );
  }
  frame.inRow = next.value.name === frame.last ? frame.inRow + 1 : 1;
  frame.last = next.value.name;
  return next.value;
}

/** Writes the start of an element, or the whole of it where it holds nothing but one text or nothing at all. */
function begin(page: Page, element: XmlElement, stack: Frame[]): void {
  const { children } = element;
  const list = Array.isArray(children) ? (children as readonly XmlNode[]) : undefined;
  const inline = stack.at(-1)?.inline === true;
  const only = list === undefined || list.length > 1 ? undefined : (list[0] ?? '');
  const forms = startTag(page, element, stack, inline, typeof only === 'string' && only !== '');
  if (typeof only === 'string') {
    if (only === '') put(page, '/>');
    else {
      put(page, isPlainText(only) ? only : safe(only, 'text', () => `The text of ${path(stack, element)}`));
      put(page, forms.end);
    }
    return;
  }
  stack.push({
    element,
    forms,
    list,
    taken: 0,
    lazy: list === undefined ? children[Symbol.iterator]() : undefined,
    last: '',
    inRow: 0,
    inline: inline || list?.some((child) => typeof child === 'string') === true,
    unclosed: true,
  });
}

/** Writes a start tag, on a line of its own unless `inline`, and without its `>` unless it is `closed`. @returns its forms */
function startTag(
  page: Page,
  element: XmlElement,
  stack: readonly Frame[],
  inline: boolean,
  closed: boolean,
): Forms {
  const { name, attributes } = element;
  const forms = formsOf(name);
  if (!forms.isName)
    throw new Error(`“${name}”, at ${path(stack, element)}, cannot be the name of an element in XML.`);
  let pending = inline ? forms.start : onLine(forms, stack.length).start;
  for (const key in attributes) {
    const value = attributes[key];
    if (value === undefined) continue;
    const { isName, attribute } = formsOf(key);
    if (!isName)
      throw new Error(`“${key}”, at ${path(stack, element)}, cannot be the name of an attribute in XML.`);
    put(page, pending);
    put(page, attribute);
    put(page, isPlainValue(value) ? value : unsafeValue(value, key, stack, element));
    pending = '"';
  }
  if (!closed) put(page, pending);
  else if (pending === '"') put(page, '">');
  else put(page, inline ? `${forms.start}>` : onLine(forms, stack.length).closed);
  return forms;
}

function unsafeValue(value: string, key: string, stack: readonly Frame[], element: XmlElement): string {
  return safe(value, 'attribute', () => `The attribute ${key} of ${path(stack, element)}`);
}

function endTag(page: Page, { forms, inline, unclosed }: Frame, depth: number): void {
  if (unclosed) put(page, '/>');
  else put(page, inline ? forms.end : onLine(forms, depth).end);
}

/** The path of the element that is being written, such as `/ead/archdesc/dsc/c[3]/did`, for messages. */
function path(stack: readonly Frame[], leaf?: XmlElement): string {
  const elements = stack.map(({ element }) => element);
  if (leaf !== undefined) elements.push(leaf);
  return elements.map(({ name }, depth) => `/${name}${position(name, stack[depth - 1])}`).join('');
}

/** Which of its parent's children of that name an element is (in a lazy list, since another name came before). */
function position(name: string, parent: Frame | undefined): string {
  if (parent?.list === undefined) return parent === undefined ? '' : `[${parent.inRow}]`;
  const alike = (child: XmlNode) => typeof child !== 'string' && child.name === name;
  if (parent.list.filter(alike).length === 1) return '';
  return `[${parent.list.slice(0, parent.taken).filter(alike).length}]`;
}
