import { describe, expect, test } from 'vitest';
import { SMALL_EAD3, said, smallEad3, validateSmall } from './small-file.ts';

/** "Within seconds", with a wide margin for a busy machine. */
const LIMIT = 20_000;

describe('what would exhaust the machine is refused', () => {
  const laughs = (deep: number) =>
    Array.from({ length: deep }, (_, at) => `<!ENTITY e${at + 1} "${`&e${at};`.repeat(10)}">`).join('');
  const wide = 'x'.repeat(50_000_000);
  const cases: [string, () => string, RegExp][] = [
    [
      'a billion laughs',
      () => smallEad3({ type: `<!DOCTYPE ead [<!ENTITY e0 "ha">${laughs(9)}]>`, title: '&e9;' }),
      /blow it up/,
    ],
    [
      'entities in entities without end',
      () => smallEad3({ type: `<!DOCTYPE ead [<!ENTITY e0 "ha">${laughs(1000)}]>`, title: '&e1000;' }),
      /blow it up/,
    ],
    [
      'quadratic growth',
      () =>
        smallEad3({
          type: `<!DOCTYPE ead [<!ENTITY a "${'x'.repeat(100_000)}">]>`,
          title: '&a;'.repeat(100_000),
        }),
      /blow it up/,
    ],
    [
      'an entity within itself',
      () => smallEad3({ type: '<!DOCTYPE ead [<!ENTITY a "&b;"><!ENTITY b "&a;">]>', title: '&a;' }),
      /has no end/,
    ],
    [
      '100,000 elements in one another',
      () => '<c>'.repeat(100_000) + '</c>'.repeat(100_000),
      /more than 256 deep/,
    ],
    ['100,000 elements that are never closed', () => '<c>'.repeat(100_000), /more than 256 deep/],
    [
      'an attribute of 50 MB',
      () => SMALL_EAD3.replace('level="collection"', `level="${wide}"`),
      /longer than 10 million/,
    ],
    ['a text of 50 MB', () => SMALL_EAD3.replace('Letters', wide), /longer than 10 million/],
    ['a name of 50 MB', () => `<${wide}/>`, /longer than 10 million/],
    ['a comment of 50 MB', () => `<!--${wide}-->${SMALL_EAD3}`, /longer than 10 million|no XML file/],
  ];
  test.each(cases)('%s', { timeout: LIMIT }, async (_, make, says) => {
    const result = await validateSmall(make());
    expect(result.valid).toBe(false);
    expect(said(result)).toMatch(says);
    expect(JSON.stringify(result).length).toBeLessThan(10_000);
  });

  test('the same fault in each of 80,000 components', { timeout: LIMIT }, async () => {
    const many = SMALL_EAD3.replace(
      '</archdesc>',
      `<dsc>${'<c wrong="x"/>\n'.repeat(80_000)}</dsc></archdesc>`,
    );
    const result = await validateSmall(many);
    expect(result.messages.length).toBe(100);
    expect(result.more).toBeGreaterThan(79_000);
  });

  test('a value of 5 MB is not said in full', async () => {
    const result = await validateSmall(
      SMALL_EAD3.replace('level="collection"', `level="${'x y '.repeat(1_250_000)}"`),
    );
    expect(result.messages[0]?.path).toBe('/ead/archdesc');
    expect(JSON.stringify(result).length).toBeLessThan(10_000);
  });
});

describe('what is no XML at all', () => {
  test.each([
    ['an empty file', new Uint8Array(), 'The file is empty.'],
    ['blanks', Buffer.from(' \n\n '), 'This is no XML file: it does not begin with "<".'],
    [
      'a picture',
      Buffer.from('89504e470d0a1a0a0000000d49484452', 'hex'),
      'This is no XML file: it does not begin with "<".',
    ],
    [
      'bytes of every kind',
      Buffer.from(Array.from({ length: 4096 }, (_, at) => (at * 89) % 256)),
      'This is no XML file',
    ],
    ['a table', Buffer.from('number,title\n1,Letter\n'), 'This is no XML file: it does not begin with "<".'],
    [
      'an encoding that nobody knows',
      Buffer.from('<?xml version="1.0" encoding="quill"?><ead/>'),
      'the encoding quill',
    ],
    [
      'Latin-1 that says it is UTF-8',
      Buffer.from('<ead>\u00e9</ead>', 'latin1'),
      'bytes that are no characters',
    ],
    ['a web page', Buffer.from('<!DOCTYPE html><html><p>Quill<br></html>'), '</html> closes nothing here'],
    [
      'another format',
      Buffer.from('<html xmlns="http://www.w3.org/1999/xhtml"/>'),
      'The outermost element is <html>',
    ],
  ])('%s', async (_, bytes, says) => {
    const result = await validateSmall(bytes);
    expect(result.valid).toBe(false);
    expect(result.schema).toBeUndefined();
    expect(said(result)).toContain(says);
  });

  test('UTF-16 is XML as well', async () => {
    const declared = SMALL_EAD3.replace('UTF-8', 'UTF-16').replace('Letters', 'Brev 🦢');
    expect(await validateSmall(Buffer.from(`\uFEFF${declared}`, 'utf16le'))).toMatchObject({ valid: true });
    const bigEndian = Buffer.from(`\uFEFF${declared}`, 'utf16le').swap16();
    expect(await validateSmall(bigEndian)).toMatchObject({ valid: true });
    expect(await validateSmall(Buffer.from(declared, 'utf16le').subarray(0, 301))).toMatchObject({
      valid: false,
    });
  });

  test('a message cannot give orders to the terminal', async () => {
    const orders = SMALL_EAD3.replace('level="collection"', 'level="\u009B2J\u202Etxt"');
    const { messages } = await validateSmall(orders);
    expect(messages[0]?.says).toContain('“[U+009B]2J[U+202E]txt”');
    expect(messages[0]?.engine).not.toMatch(/[\u0080-\u009F\u202E]/);
  });
});
