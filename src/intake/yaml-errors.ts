import type { ErrorCode } from 'yaml';

const QUOTE_IT = 'Put the whole text between quotation marks.';

/**
 * Plain words for the errors of YAML that a person is likely to make: the code of the `yaml` package, the
 * beginning of its message where one code has several meanings, what it means, what to do. The first that fits counts.
 */
export const YAML_ERRORS: readonly { code: ErrorCode; begins?: string; found: string; advice: string }[] = [
  {
    code: 'TAB_AS_INDENT',
    found: 'The line is set in with a tab.',
    advice: 'Use blanks instead, two for each step: YAML allows no tabs there.',
  },
  { code: 'DUPLICATE_KEY', found: 'The same name stands twice.', advice: 'Join the two entries into one.' },
  {
    code: 'BAD_INDENT',
    found: 'The line is not set in as far as the lines it belongs with.',
    advice: 'Let all entries of one group begin with the same number of blanks.',
  },
  {
    code: 'BLOCK_AS_IMPLICIT_KEY',
    found: 'The text holds a colon followed by a blank, which would begin a new entry.',
    advice: QUOTE_IT,
  },
  {
    code: 'MULTILINE_IMPLICIT_KEY',
    found: 'The line is no entry: it has no name with a colon and a blank behind it.',
    advice: 'Write name: value. A long text goes on below “name: |”, each line set in by two blanks.',
  },
  {
    code: 'MISSING_CHAR',
    begins: 'Missing closing',
    found: 'A quotation mark opens a text here, and none closes it.',
    advice:
      'Close it with the same mark; between double marks, write a double mark that belongs to the text as \\".',
  },
  {
    code: 'MISSING_CHAR',
    begins: 'Implicit map keys',
    found: 'The line is no entry: it has no name with a colon and a blank behind it.',
    advice: 'Write name: value. A long text goes on below “name: |”, each line set in by two blanks.',
  },
  {
    code: 'MISSING_CHAR',
    begins: 'Comments must be',
    found: 'A hash (#) stands right behind a text, where it would begin a comment.',
    advice: QUOTE_IT,
  },
  {
    code: 'BAD_SCALAR_START',
    found: 'The text begins with a sign that has a meaning of its own in YAML.',
    advice: QUOTE_IT,
  },
  {
    code: 'BAD_DQ_ESCAPE',
    found: 'A backslash stands in a text between double quotation marks and means nothing there.',
    advice: "Use single quotation marks ('…') instead, or write the backslash twice.",
  },
  {
    code: 'MULTIPLE_DOCS',
    found: 'A line of three dashes begins a second document.',
    advice: 'Delete that line: the file is one document.',
  },
  {
    code: 'TAG_RESOLVE_FAILED',
    found: 'The text begins with an exclamation mark, which has a meaning of its own in YAML.',
    advice: QUOTE_IT,
  },
  {
    code: 'RESOURCE_EXHAUSTION',
    found: 'The entries are nested more deeply than can be read.',
    advice: 'Take away brackets and dashes that are not needed.',
  },
  {
    code: 'UNEXPECTED_TOKEN',
    begins: 'Unexpected scalar at node end',
    found: 'Text follows the quotation mark that closes a text.',
    advice:
      'Put the whole text between quotation marks; write a double mark that belongs to the text as \\".',
  },
];
