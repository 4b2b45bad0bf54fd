import type { Finding } from '../../catalogue/finding.ts';
import type { Label } from './labels-of.ts';

/** A text that did not fit onto its label even at its smallest. @param what `title` */
export const cutShort = ({ key, codes }: Label, what: string): Finding => ({
  rule: 'labels.cut-short',
  weight: 'consider',
  place: codes === undefined ? {} : { component: codes },
  found: `The ${what} on the label of ${key} is too long for it and was cut short.`,
  advice: 'Choose larger labels with --sheet, or shorten it in the list.',
});

// So many letters are named; of a script that is missing wholly, that is enough to know it by.
const NAMED = 40;

/** Letters that no font at hand has. */
export function noFontFor(letters: readonly string[]): Finding {
  const count = letters.length === 1 ? 'one letter' : `${letters.length} letters`;
  const names = `${letters.slice(0, NAMED).join(' ')}${letters.length > NAMED ? ' …' : ''}`;
  return {
    rule: 'labels.no-font',
    weight: 'should',
    place: {},
    found: `There is no font for ${count}, shown on the labels as empty boxes: ${names}`,
    advice: 'Name a font file of your own that has them, .ttf or .otf, with --font FILE.',
  };
}

/** `labels-printed.csv` is not what this program writes. */
export const notReadable = (file: string): Finding => ({
  rule: 'labels.printed',
  weight: 'must',
  place: { file },
  found:
    'This is not a table with the headings "label" and "text", so it cannot be told what was printed before.',
  advice: 'Put it right, or delete it: then every label counts as not yet printed.',
});
