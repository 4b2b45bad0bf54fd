import { utf16Order } from '../decode.ts';
import { refuse } from './refuse.ts';

/** What is told of an XML document, in its order. Names come without their prefix. */
export interface Listener {
  /** The attributes as written, for `attribute`; `empty` for an element without content, of which no end is told. */
  open(name: string, attributes: string, empty: boolean): void;
  close(name: string): void;
  /** Text with its references resolved; one text may come in several pieces. */
  text(text: string): void;
}

const LT = 60;
const GT = 62;
const SLASH = 47;
const COLON = 58;
const DOUBLE = 34;
const SINGLE = 39;
const BANG = 33;
const QUESTION = 63;
const BLANK = 32;

/**
 * Goes through a part of a workbook. Own code, because a workbook of 100,000 rows has millions of elements of which
 * four kinds matter, and because nothing but the five references of XML itself is ever resolved: a document type, and
 * with it every other entity, is refused, as the format demands (ECMA-376 Part 2, 8.1.4).
 * @param name of the part, for messages
 * @throws CatalogueError where the part is no whole XML document
 */
export function scanXml(bytes: Uint8Array, file: string, name: string, to: Listener): void {
  const xml = decode(bytes, file, name);
  const broken = (what: string) =>
    refuse('workbook.broken', file, `The part ${name} of the workbook is damaged: ${what}.`);
  let depth = 0;
  let at = 0;
  for (;;) {
    const lt = xml.indexOf('<', at);
    if (lt < 0) break;
    if (lt > at && depth > 0) to.text(plain(xml.slice(at, lt), broken));
    const code = xml.charCodeAt(lt + 1);
    if (code === BANG || code === QUESTION) {
      at = aside(xml, lt, broken, to);
      continue;
    }
    const gt = endOfTag(xml, lt + 1);
    if (gt < 0) throw broken('a tag is not closed');
    if (code === SLASH) {
      depth--;
      to.close(localName(xml, lt + 2, gt).name);
    } else {
      const empty = xml.charCodeAt(gt - 1) === SLASH;
      const end = empty ? gt - 1 : gt;
      const tag = localName(xml, lt + 1, end);
      if (!empty) depth++;
      to.open(tag.name, tag.end < end ? xml.slice(tag.end, end) : '', empty);
    }
    at = gt + 1;
  }
  if (depth !== 0 || at === 0) broken('its end is missing');
}

function decode(bytes: Uint8Array, file: string, name: string): string {
  try {
    return new TextDecoder(utf16Order(bytes) ?? 'utf-8', { fatal: true }).decode(bytes);
  } catch {
    return refuse('workbook.broken', file, `The part ${name} of the workbook is not in UTF-8.`);
  }
}

/** The position behind a comment, a processing instruction or a section of plain characters, whose text is told. */
function aside(xml: string, lt: number, broken: (what: string) => never, to: Listener): number {
  const skip = (end: string) => {
    const found = xml.indexOf(end, lt + 2);
    return found < 0 ? broken('its end is missing') : found + end.length;
  };
  if (xml.startsWith('<?', lt)) return skip('?>');
  if (xml.startsWith('<!--', lt)) return skip('-->');
  if (!xml.startsWith('<![CDATA[', lt)) return broken('it has a document type or entities of its own');
  const end = skip(']]>');
  to.text(xml.slice(lt + 9, end - 3));
  return end;
}

/** Position of the sign that ends a tag; one between quotation marks does not. */
function endOfTag(xml: string, from: number): number {
  let quote = 0;
  for (let at = from; at < xml.length; at++) {
    const code = xml.charCodeAt(at);
    if (quote !== 0) {
      if (code === quote) quote = 0;
    } else if (code === GT) return at;
    else if (code === DOUBLE || code === SINGLE) quote = code;
    else if (code === LT) return -1;
  }
  return -1;
}

function localName(xml: string, from: number, to: number): { name: string; end: number } {
  let start = from;
  let end = from;
  for (; end < to; end++) {
    const code = xml.charCodeAt(end);
    if (code === COLON) start = end + 1;
    else if (code <= BLANK) break;
  }
  return { name: xml.slice(start, end), end };
}

const REFERENCES: Readonly<Record<string, string>> = { lt: '<', gt: '>', amp: '&', quot: '"', apos: "'" };

function plain(text: string, broken: (what: string) => string): string {
  if (!text.includes('&')) return text;
  return text.replace(/&([^;&\s]{0,12});?/g, (whole, name: string) => {
    const [, hex, decimal] = /^#(?:x([\da-f]+)|(\d+))$/i.exec(name) ?? [];
    const code = hex === undefined ? Number(decimal) : Number.parseInt(hex, 16);
    if (whole.endsWith(';') && code > 0 && code <= 0x10ffff) return String.fromCodePoint(code);
    return (whole.endsWith(';') && REFERENCES[name]) || broken('it refers to an entity');
  });
}

const patterns = new Map<string, RegExp>();

/** The value of an attribute, by its name without prefix: `attribute(' r="A1" s="2"', 's')`. */
export function attribute(attributes: string, name: string): string | undefined {
  let pattern = patterns.get(name);
  if (pattern === undefined) {
    pattern = new RegExp(`\\s(?:[\\w.-]+:)?${name}\\s*=\\s*(?:"([^"]*)"|'([^']*)')`);
    patterns.set(name, pattern);
  }
  const found = pattern.exec(attributes);
  if (found === null) return undefined;
  const value = found[1] ?? found[2] ?? '';
  return value.includes('&') ? plain(value, () => '') : value;
}
