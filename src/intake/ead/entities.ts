import { parse } from '../../xml/engine.ts';

/**
 * The characters that the document type of EAD 2002 gave a name to and that finding aids use: the 96 of ISO 8859-1 in
 * the order of their numbers (from 160), then marks of punctuation. The names are those of ISO 8879 as HTML 4.01,
 * section 24, lists them (from memory).
 */
const LATIN_1 =
  'nbsp iexcl cent pound curren yen brvbar sect uml copy ordf laquo not shy reg macr deg plusmn sup2 sup3 acute micro ' +
  'para middot cedil sup1 ordm raquo frac14 frac12 frac34 iquest Agrave Aacute Acirc Atilde Auml Aring AElig Ccedil ' +
  'Egrave Eacute Ecirc Euml Igrave Iacute Icirc Iuml ETH Ntilde Ograve Oacute Ocirc Otilde Ouml times Oslash Ugrave ' +
  'Uacute Ucirc Uuml Yacute THORN szlig agrave aacute acirc atilde auml aring aelig ccedil egrave eacute ecirc euml ' +
  'igrave iacute icirc iuml eth ntilde ograve oacute ocirc otilde ouml divide oslash ugrave uacute ucirc uuml yacute ' +
  'thorn yuml';

const OTHERS: Readonly<Record<string, string>> = {
  ...{ OElig: 'Œ', oelig: 'œ', Scaron: 'Š', scaron: 'š', Yuml: 'Ÿ', fnof: 'ƒ', circ: 'ˆ', tilde: '˜' },
  ...{ ensp: '\u2002', emsp: '\u2003', thinsp: '\u2009', ndash: '–', mdash: '—', lsquo: '‘', rsquo: '’' },
  ...{ sbquo: '‚', ldquo: '“', rdquo: '”', bdquo: '„', dagger: '†', Dagger: '‡', bull: '•', hellip: '…' },
  ...{ permil: '‰', prime: '′', Prime: '″', lsaquo: '‹', rsaquo: '›', euro: '€', trade: '™' },
};

const NAMED = new Map([
  ...LATIN_1.split(' ').map((name, index): [string, string] => [name, String.fromCodePoint(160 + index)]),
  ...Object.entries(OTHERS),
]);

const UNDEFINED = /^Entity '(.*)' not defined/s;

/** Whether the parser warns of an entity that nothing in the file defines. */
export const isUndefined = (message: string): boolean => UNDEFINED.test(message);

/**
 * A file in which entities are characters where only a document type definition outside of the file defines them,
 * which is not read: `&eacute;` becomes a reference to é. Those that are not known stay.
 */
export async function withCharacters(bytes: Uint8Array): Promise<{ bytes: Uint8Array; repaired: string[] }> {
  const asItIs = { bytes, repaired: [] };
  const file = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  // Two bytes a letter, or no document type: there is none to name characters.
  if (!file.includes('<!DOCTYPE')) return asItIs;
  const parsed = await parse(bytes);
  if (parsed.document === undefined) return asItIs;
  parsed.document.dispose();
  const undefinedNames = parsed.warnings.map(({ message }) => UNDEFINED.exec(message)?.[1]);
  const names = new Set(undefinedNames.filter((name) => name !== undefined && NAMED.has(name)));
  if (names.size === 0) return asItIs;
  // One letter a byte, so that nothing else changes whatever the encoding.
  const text = file
    .toString('latin1')
    .replace(/<!\[CDATA\[.*?\]\]>|<!--.*?-->|&(\w+);/gs, (written, name?: string) =>
      name !== undefined && names.has(name) ? `&#${NAMED.get(name)?.codePointAt(0)};` : written,
    );
  const list = [...names].map((name) => `&${name};`).join(', ');
  const says = `${list}: only a document type definition outside of the file says what that is. The character of that name in HTML was put in.`;
  return { bytes: Buffer.from(text, 'latin1'), repaired: [says] };
}
