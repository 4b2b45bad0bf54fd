import type { Phrase } from './phrase.ts';

/** Why a file is no well-formed XML, or one that no honest finding aid needs to be. */
export const XML_PHRASES: readonly Phrase[] = [
  {
    engine: /^Opening and ending tag mismatch: (.*) line (\d+) and (.*)$/s,
    says: (_, open = '', line = '', close = '') =>
      `</${close}> closes nothing here: <${open}>, begun in line ${line}, is still open.`,
  },
  {
    engine: /^Premature end of data in tag (.*) line (\d+)/s,
    says: (_, open = '', line = '') =>
      `The file ends while <${open}>, begun in line ${line}, is still open. Is it cut off?`,
  },
  {
    engine: /^Couldn't find end of Start Tag (.*?)(?: line (\d+))?$/s,
    says: (_, open = '') => `The start tag <${open} is not closed with ">".`,
  },
  {
    engine: /^(?:xmlParseEntityRef: no name|EntityRef: expecting ';')/,
    says: () => 'An "&" stands alone; write it as "&amp;".',
  },
  {
    engine: /^Unescaped '<' not allowed in attributes values/,
    says: () => 'A "<" stands in an attribute; write it as "&lt;".',
  },
  {
    engine: /^StartTag: invalid element name/,
    says: () => 'After "<" the name of an element is expected. A "<" in a text is written as "&lt;".',
  },
  {
    engine: /^Attribute (.*) redefined/s,
    says: (_, name = '') => `The attribute ${name} stands twice in one element.`,
  },
  {
    engine: /^AttValue: .* expected/,
    says: () => 'The value of an attribute must stand in quotation marks.',
  },
  {
    engine: /^Specification mandates value for attribute (.*)$/s,
    says: (_, name = '') => `The attribute ${name} has no value.`,
  },
  { engine: /^attributes construct error/, says: () => 'The attributes of this element cannot be read.' },
  {
    engine: /^Entity '(.*)' not defined/s,
    says: (_, name = '') =>
      `The entity &${name}; is defined nowhere in this file. Write the character itself in its place.`,
  },
  {
    engine: /^Attribute references external entity '(.*)'/s,
    says: (_, name = '') =>
      `The entity &${name}; stands for the content of another file. No other file is read.`,
  },
  {
    engine: /^Detected an entity reference loop/,
    says: () => 'An entity is defined by way of itself, so it has no end.',
  },
  {
    engine: /^Maximum entity (?:amplification factor|nesting depth) exceeded/,
    says: () => 'The entities of this file would blow it up to many times its size, so it was not read on.',
  },
  {
    engine: /^Excessive depth in document: (\d+)/,
    says: (_, depth = '') =>
      `Elements stand in elements more than ${depth} deep, so the file was not read on.`,
  },
  {
    engine: /^(?:Resource limit exceeded|Huge input lookup|.*(?:too long|[Tt]oo big))/,
    says: () =>
      'A single text, attribute or name is longer than 10 million characters, so the file was not read on.',
  },
  { engine: /^Document is empty/, says: () => 'This is no XML file: it does not begin with "<".' },
  {
    engine: /^Start tag expected, '<' not found/,
    says: () => 'This is no XML file: it does not begin with "<".',
  },
  {
    engine: /^Extra content at the end of the document/,
    says: () => 'Something follows after the end of the outermost element; a file holds only one.',
  },
  {
    engine: /^XML declaration allowed only at the start/,
    says: () => 'The XML declaration "<?xml …?>" must be the very first thing in the file.',
  },
  {
    engine: /^Unsupported encoding:? ?(.*)$/s,
    says: (_, name = '') =>
      `The file says that it is in the encoding ${name}, which cannot be read. Save it as UTF-8.`,
  },
  {
    engine: /^(?:Invalid bytes in character encoding|Input is not proper UTF-8)/,
    says: () =>
      'The file holds bytes that are no characters in its encoding (UTF-8, if it names none). Save it as UTF-8.',
  },
  {
    engine:
      /^(?:Invalid character|PCDATA invalid Char value|xmlParseCharRef: invalid xmlChar|.*invalid [Cc]har)/,
    says: () => 'A control character stands here, which no XML file can hold. Take it out.',
  },
  {
    engine: /^Namespace prefix (\S*) (?:for \S+ )?on (\S*) is not defined/,
    says: (_, prefix = '', name = '') =>
      `The prefix ${prefix}: in <${name}> is bound to no namespace; xmlns:${prefix}="…" is missing.`,
  },
  {
    engine: /^xmlns.*: '?(.*?)'? is not a valid URI$/s,
    says: (_, address = '') => `“${address}” cannot name a namespace; it must be an address.`,
  },
  {
    engine: /^ID (.*) already defined/s,
    says: (_, id = '') => `“${id}” is the id of two elements; every id may occur once only.`,
  },
  {
    engine: /^xml:id : attribute value (.*) is not an NCName/s,
    says: (_, id = '') =>
      `“${id}” cannot be an id: one begins with a letter and holds only letters, digits, . - and _.`,
  },
  {
    engine: /^Sequence '\]\]>' not allowed in content/,
    says: () => 'A "]]>" stands in a text; write it as "]]&gt;".',
  },
  { engine: /^CData section not finished/, says: () => 'A CDATA section is not closed with "]]>".' },
  { engine: /^Comment not terminated/, says: () => 'A comment is not closed with "-->".' },
  {
    engine: /^Double hyphen within comment/,
    says: () => 'Two hyphens stand in a comment, where they may not.',
  },
  {
    engine: /(?:[Oo]ut of memory|[Mm]emory allocation failed)/,
    says: () => 'The file needs more memory than there is.',
  },
];
