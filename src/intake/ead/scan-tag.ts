import { isName } from '../../xml/safe.ts';
import { afterBlanks, CODE, fail, references } from './scan-text.ts';

/** What the start tags of a text have in common. */
export interface Seen {
  /** Every name that occurs, under itself: equal names become one string. */
  names: Map<string, string>;
  /** The value of every attribute `id`. */
  ids: Set<string>;
}

/** A start tag, or the tag of an empty element. */
interface StartTag {
  name: string;
  attributes: Readonly<Record<string, string>>;
  isEmpty: boolean;
  /** After the tag. */
  end: number;
  /** For the scanner: where the children of the element begin. */
  first: number;
}

const NO_ATTRIBUTES: Readonly<Record<string, string>> = Object.freeze({});

/**
 * Reads a start tag: XML 1.0, 3.1.
 * @param from after the mark that begins it
 * @param seen what it has in common with others is added here
 */
export function startTag(text: string, from: number, { names, ids }: Seen): StartTag {
  let end = endOfName(text, from);
  const name = known(text, from, end, names);
  let attributes: Record<string, string> | undefined;
  for (;;) {
    const here = afterBlanks(text, end);
    const next = text.charCodeAt(here);
    if (next === CODE.greater || next === CODE.slash) {
      const isEmpty = next === CODE.slash;
      if (isEmpty && text.charCodeAt(here + 1) !== CODE.greater) fail(`The tag ${name} is not closed`, here);
      end = here + (isEmpty ? 2 : 1);
      return { name, attributes: attributes ?? NO_ATTRIBUTES, isEmpty, end, first: 0 };
    }
    if (here === end) fail('A blank is expected before an attribute', here);
    end = endOfName(text, here);
    const key = known(text, here, end, names);
    const equals = afterBlanks(text, end);
    const quote = afterBlanks(text, equals + 1);
    end = text.charCodeAt(equals) === CODE.equals ? endOfValue(text, quote) : 0;
    if (end === 0) fail(`The attribute ${key} has no value in quotation marks`, here);
    if (attributes === undefined) attributes = {};
    else if (Object.hasOwn(attributes, key)) fail(`The attribute ${key} stands here twice`, here);
    if (end > 0) attributes[key] = text.slice(quote + 1, end);
    else {
      end = -end;
      // 3.3.3: line breaks and tabs become blanks, those that are written as references do not.
      attributes[key] = references(text.slice(quote + 1, end).replace(/[\t\n\r]/g, ' '), quote);
    }
    if (key === 'id') ids.add(attributes[key] ?? '');
    end += 1;
  }
}

function endOfName(text: string, from: number): number {
  let end = from;
  for (; end < text.length; end++) {
    const code = text.charCodeAt(end);
    if (code <= CODE.blank || code === CODE.greater || code === CODE.slash || code === CODE.equals) break;
  }
  return end;
}

/** A name, the very same string wherever it occurs; whether it is one is looked at once. */
function known(text: string, from: number, end: number, names: Map<string, string>): string {
  const name = text.slice(from, end);
  const before = names.get(name);
  if (before !== undefined) return before;
  if (!isName(name)) fail('The name of an element or attribute is expected', from);
  // A key of an object is what the engine compares and looks up without reading its letters.
  const [key = name] = Object.keys({ [name]: true });
  names.set(key, key);
  return key;
}

/** Where a value closes, as a negative number if it cannot stand as it is; 0 where it is none. */
function endOfValue(text: string, quote: number): number {
  const mark = text.charCodeAt(quote);
  if (mark !== CODE.double && mark !== CODE.single) return 0;
  let plain = true;
  for (let end = quote + 1; end < text.length; end++) {
    const code = text.charCodeAt(end);
    if (code === mark) return plain ? end : -end;
    if (code === CODE.less) return 0;
    if (code < CODE.blank || code === CODE.ampersand) plain = false;
  }
  return 0;
}
