import { describe, expect, test } from 'vitest';
import { pieceOf } from '../../src/housing/piece.ts';
import { usualOf } from '../../src/housing/usual-form.ts';
import { readKind } from '../../src/kinds/kind-words.ts';
import { someThing } from '../support/catalogue.ts';

const kindOf = (word: string) => readKind(word)?.kind.one;

// English is head-final: the last word of a name for a thing says what it is.
describe('a kind of several words is what its last word says', () => {
  test.each([
    ['love letters', 'letter', true],
    ['Private letter', 'letter', false],
    ['business letters', 'letter', true],
    ['family photographs', 'photograph', true],
    ['old postcards', 'postcard', true],
    ['school photographs', 'photograph', true],
    ['black and white photographs', 'photograph', true],
    ['wartime ration books', 'ration book', true],
    ['letters of a soldier', 'letter', true],
    ['old letters, torn', 'letter', true],
    ['letters (copies)', 'letter', true],
    ['letters and postcards', 'letter', true],
    ['letter to Mr Bell', 'letter', false],
    ['photograph of a violin', 'photograph', false],
    ['old records', 'gramophone record', true],
    ['old brass lamps', 'object', true],
    ['best blue dress', 'textile', false],
    ['framed certificate', 'certificate', false],
    ['framed print', 'print', false],
    ['framed map', 'map', false],
    ['framed painting', 'painting', false],
  ])('%s: %s', (word, one, plural) => expect(readKind(word)).toMatchObject({ kind: { one }, plural }));

  test('what it says more is kept for its count, and no number is', () => {
    expect(readKind('Love letters')?.thing).toEqual({ one: 'Love letter', many: 'Love letters' });
    expect(readKind('twelve letters')?.plural).toBe(true);
    for (const word of ['twelve letters', '12 letters', 'letters (copies)', 'various letters'])
      expect(readKind(word)?.thing, word).toBeUndefined();
    expect(readKind('old brass lamps')?.thing).toEqual({ one: 'lamp', many: 'lamps' });
  });

  // Common practice. What is none of the tables' kinds stays unknown, and `check` asks.
  test.each([
    ['letter box', 'object'],
    ['letter opener', 'object'],
    ['photo frame', 'object'],
    ['map case', 'object'],
    ['record player', 'object'],
    ['music box', 'object'],
    ['tape measure', 'object'],
    ['card table', 'object'],
    ['book end', 'object'],
    ['slide projector', 'object'],
    ['film camera', 'object'],
    ['hair slide', 'object'],
    ['picture postcard', 'postcard'],
    ['log book', 'diary'],
    ['autograph album', 'autograph album'],
    ['wedding album', 'photograph album'],
    ['stamp album', undefined],
    ['school records', undefined],
    ['church record', undefined],
    ['records (documents)', undefined],
    ['record of service', undefined],
    ['case files', undefined],
    ['index cards', undefined],
    ['apple tree', undefined],
    ['cotton reel', undefined],
    ['copper wire', undefined],
    ['roll film', undefined],
    ['oil portrait', undefined],
    ['cheque book', undefined],
    ['brass letters', undefined],
    ['mountain pass', undefined],
    ['box of letters', undefined],
    ['envelope of negatives', undefined],
    ['bundle of letters', undefined],
    ['punt pole', undefined],
  ])('%s is %s', (word, one) => expect(kindOf(word)).toBe(one));

  test('a container of small things is the container', () => {
    expect(readKind('tin of buttons')).toMatchObject({ kind: { one: 'object' }, thing: { one: 'tin' } });
    expect(usualOf('jar of buttons')?.usual.each).toBeGreaterThan(50);
  });

  test('no gramophone record is packed for a school record, and an album of stamps is bound', () => {
    expect(usualOf('school record')).toBeUndefined();
    expect(usualOf('stamp album')?.usual.form).toBe('bound');
    expect(usualOf('old records')?.usual.form).toBe('disc');
  });
});

// Words that families use (from memory), with the kind that they are counted as and how they lie.
describe('everyday words for papers, pictures and carriers', () => {
  test.each([
    ['cassette tapes', 'sound tape', 'tape'],
    ['audio cassettes', 'sound tape', 'tape'],
    ['compact cassette', 'sound tape', 'tape'],
    ['VHS tapes', 'video tape', 'tape'],
    ['USB sticks', 'digital file', 'digital'],
    ['thumb drive', 'digital file', 'digital'],
    ['flash drive', 'digital file', 'digital'],
    ['memory stick', 'digital file', 'digital'],
    ['CDs', 'digital file', 'digital'],
    ['LPs', 'gramophone record', 'disc'],
    ['framed picture', 'framed photograph', 'framed'],
    ['framed print', 'print', 'framed'],
    ['framed certificate', 'certificate', 'framed'],
    ['mourning cards', 'obituary', 'sheet'],
    ['memorial card', 'obituary', 'sheet'],
    ['visiting cards', 'greeting card', 'sheet'],
    ['cheques', 'business paper', 'sheet'],
    ['minute book', 'business paper', 'bound'],
    ['atlases', 'book', 'bound'],
    ['address book', 'notebook', 'bound'],
    ['stereograph', 'mounted photograph', 'mounted'],
    ['sextant', 'object', 'object'],
    ['barometer', 'object', 'object'],
    ['compass', 'object', 'object'],
    ['telescope', 'object', 'object'],
    ['cushion', 'textile', 'textile'],
  ])('%s: %s, %s', (kind, one, form) => {
    expect(kindOf(kind)).toBe(one);
    expect(pieceOf(someThing({ row: 2, kind })).form).toBe(form);
  });

  // A compact cassette in its case is 109 × 70 × 17 mm (from memory); a reel is 7 in.
  test('a cassette is no reel', () => {
    for (const kind of ['cassette tape', 'compact cassettes', 'audio cassette'])
      expect(usualOf(kind)?.usual.size).toEqual({ long: 109, short: 70 });
  });
});
