const BRACKETS = /\([^()]*\)/g;
const BLACK_AND_WHITE = /\bblack (?:and|&) white\b/gi;
/** What stands behind the thing itself. */
const HEAD_ENDS =
  / (?:of|with|from|in|for|and|about|to|by|on|at|concerning|regarding|showing|without|under|between|or|sent|written|taken|received) | ?[,;:/&+]| - | ?[–—]/i;

/**
 * The words of a kind as far as they name the thing itself: in English the last word before an "of" or a comma is the
 * thing ("framed wedding certificate", "ledger, cloth"). As they are written; without what stands in brackets.
 */
export function headWords(kind: string): string[] {
  const plain = kind.replace(BRACKETS, ' ').replace(BLACK_AND_WHITE, 'black-and-white').trim();
  return (plain.split(HEAD_ENDS, 1)[0] ?? '').split(/\s+/).filter((word) => word !== '');
}
