import fc from 'fast-check';

/** What breaks careless writers and readers of XML, JSON, CSV and HTML, a reason each. */
const SNIPPETS: readonly string[] = [
  '<p>&amp;</p>', // markup and an entity
  '&', // an ampersand alone
  '&#65;&#x0;&nbsp;', // references that must stay as typed
  ']]>', // XML 1.0, 2.4: may not stand in text as it is
  '<![CDATA[x]]>',
  '<!-- -->',
  '<?xml version="1.0"?>',
  '"\'"', // both quotes
  '\\"', // a backslash means nothing in XML
  '=1+1', // a formula to a spreadsheet
  ' ', // blanks at either end
  '   ',
  '\t',
  '\n',
  '\r', // XML 1.0, 2.11: a reader turns it into a line feed
  '\r\n',
  '\n\n', // parts paragraphs
  '\r\n \t\r\n',
  '\u00A0', // a blank to JavaScript, none to XML
  '\u0085', // the next line of EBCDIC
  '\u2028', // a line break to JavaScript
  '\uFEFF', // a byte order mark within the text
  '\u007F', // allowed by XML 1.0, if discouraged
  '\uFFFD',
  '\uD7FF\uE000', // the neighbours of the surrogates
  '\u{10FFFF}', // the last code point
  'e\u0301n\u0303', // combining marks
  'Z\u0335\u0321\u0322\u0347\u0348\u0353a\u0336\u0315', // many of them
  '👩‍👩‍👧‍👦🏳️‍🌈', // emoji made of several code points
  '𝒜𠮷', // beyond the basic plane
  'אדה קוויל', // right to left
  'يوميات العبّارة',
  '\u202Eabc\u202C', // order turned round by a control
  'Åse på fergen',
  'İıſß', // letters whose case does not map one to one
  '{{x}} $1 %s %00', // placeholders of templates
  '../../etc/passwd',
];

const VERY_LONG = fc
  .tuple(fc.constantFrom('ferry ', 'ø', '🛶', '<&'), fc.integer({ min: 1000, max: 4000 }))
  .map(([part, times]) => part.repeat(times));

// XML 1.0, 2.2, production [2] Char. Written again here, so that the generator does not lean on what it tests.
const FORBIDDEN = /[\u0000-\u0008\u000B\u000C\u000E-\u001F\uD800-\uDFFF\uFFFE\uFFFF]/gu;

const ORDINARY = fc.constantFrom(
  'Letters to Ada',
  'Ferry licence',
  'Orchard account book, volume 3',
  'Mr. & Mrs. Quill',
  'View from the landing',
  'The “Heron” under way',
  'Æbler & pærer',
);

const hostile = fc
  .array(
    fc.oneof(
      { weight: 6, arbitrary: fc.constantFrom(...SNIPPETS) },
      { weight: 2, arbitrary: fc.string({ unit: 'grapheme', maxLength: 10 }) },
      { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 10 }) },
    ),
    { minLength: 1, maxLength: 6 },
  )
  .map((parts) => parts.join('').replace(FORBIDDEN, ''))
  .map((text) => (text.trim() === '' ? `${text}ink${text}` : text));

/** A text that the model accepts: never blank, free of what XML forbids, and otherwise as nasty as may be. */
export const nastyText: fc.Arbitrary<string> = fc.oneof(
  { weight: 40, arbitrary: ORDINARY },
  { weight: 40, arbitrary: hostile },
  { weight: 1, arbitrary: VERY_LONG },
);

/** Running text of one to four paragraphs, parted as people part them. */
export const nastyProse: fc.Arbitrary<string> = fc
  .array(nastyText, { minLength: 1, maxLength: 4 })
  .chain((parts) => fc.constantFrom('\n\n', '\r\n\r\n', '\n \t\n\n').map((gap) => parts.join(gap)));
