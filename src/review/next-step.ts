import { typed } from '../catalogue/say-command.ts';
import { sayNumbersDown } from '../intake/numbers-not-written.ts';
import type { Status } from './status.ts';
import { sayFindings } from './verdict.ts';

/** The one command to run next, and why; or what is to be done before. */
export interface NextStep {
  command: string;
  why: string;
}

/** What to do where the list holds no thing yet. */
export const FILL_IN: NextStep = {
  command: 'kinfonds begin --preview',
  why: 'First write one thing in each row of the list. This then shows how they are understood.',
};

/**
 * What to do next with a catalogue, in the order of the work: mend what is said of things, settle, label, mend what is
 * said of the whole, export, hand over. Whoever has made an export without labels does not want them, and is not asked
 * again.
 * @param folder the name of the catalogue folder, after which a package is called
 * @param today YYYY-MM-DD
 */
export function nextStep(status: Status, folder: string, today: string): NextStep {
  const { findings, onThings, numbers, copies, labels, exported, handedOver: last } = status;
  const { must, should } = findings;
  if (numbers.settled === 0 && onThings > 0) {
    const why = `${sayFindings(onThings)} on things or boxes should be mended, or answered in collection.yaml, before the numbers are fixed for good.`;
    return { command: 'kinfonds check', why };
  }
  if (numbers.notSettled > 0 || numbers.notListed > 0) {
    const settles =
      numbers.settled === 0
        ? `It fixes the numbers, so that they can be written on the folders. Look first at the order: kinfonds arrange${copies > 0 ? '; and at the copies: kinfonds check' : ''}`
        : 'It gives new things their places and leaves the others where they are.';
    return { command: 'kinfonds arrange --settle', why: `${byHand(status)}${settles}` };
  }
  const toPrint = labels.fresh + labels.changed;
  const hasPrinted = labels.printed + labels.changed > 0;
  if (toPrint > 0 && (hasPrinted || (exported === undefined && last === undefined))) {
    const why = hasPrinted
      ? toPrint === 1
        ? 'One label is new, or changed since it was printed.'
        : `${toPrint} labels are new, or changed since they were printed.`
      : 'The numbers are settled, so folders and boxes can be labelled.';
    return { command: `kinfonds labels ${hasPrinted ? '--new ' : ''}--out labels.pdf`, why };
  }
  if (must > 0) {
    const why = `${sayFindings(must)} must be mended before this can be handed over.`;
    return { command: 'kinfonds check', why };
  }
  if (exported === undefined || exported.before) {
    const why =
      exported === undefined
        ? 'It writes the finding aid in open standards.'
        : 'The catalogue was changed after the last export.';
    return { command: 'kinfonds export', why };
  }
  if (should > 0) {
    const why = `${sayFindings(should)} should be mended, or answered in collection.yaml.`;
    return { command: 'kinfonds check', why };
  }
  if (last === undefined ? status.isPromised : last.before) {
    const why =
      last === undefined
        ? `Everything is ready for the package that goes to the recipient${copies > 0 ? ', if kinfonds check says so of the copies too' : ''}. Read the papers before they go.`
        : 'The catalogue was changed after the last package was made.';
    return { command: `kinfonds hand-over --out ${typed(`../${folder}-${today}`)}`, why };
  }
  if (last !== undefined) {
    const why = 'Once a year, and after every copying: it says whether every byte is still as it was.';
    return { command: `kinfonds verify ${typed(last.path)}`, why };
  }
  return {
    command: 'kinfonds find WORDS',
    why: `All is in its place${copies > 0 ? ', if kinfonds check says so of the copies too' : ''}. Try five things that you would look for.`,
  };
}

/** What must be done with a list into which the program writes no numbers. */
function byHand({ list: { file }, numbers: { toFillIn = [] } }: Status): string {
  if (toFillIn.length === 0) return '';
  const which = toFillIn.length === 1 ? 'the thing' : 'each thing';
  return `First give ${which} that has none its number in the column “number” of ${file}: downwards ${sayNumbersDown(toFillIn)}; the program writes numbers only into list.csv. `;
}
