import type { Draft } from './draft.ts';
import { joinMarks, type Mark } from './edtf-point.ts';
import { isSign, peek, type Scanner, senseAt, takeSense } from './scanner.ts';

const SIGNS: Readonly<Record<string, Mark>> = { '?': '?', '~': '~', '≈': '~' };

const signMark = (s: Scanner, ahead = 0): Mark => {
  const piece = peek(s, ahead);
  return piece?.kind === 'sign' ? (SIGNS[piece.text] ?? '') : '';
};

/** The marks before a date: "probably", "c.", "~", one after another. */
export function takeMarks(s: Scanner): Mark {
  let mark: Mark = '';
  for (;;) {
    const sense = senseAt(s);
    const sign = signMark(s);
    if (sense?.is === 'mark') mark = joinMarks(mark, sense.mark);
    else if (sign !== '' && s.at + 1 < s.pieces.length) mark = joinMarks(mark, sign);
    else if (sense?.is === 'filler' && mark !== '') mark = joinMarks(mark, '');
    else return mark;
    s.at++;
    if (isSign(s, '-') && peek(s)?.glued === true) s.at++;
  }
}

const COMPONENT = { yearWord: 'yearMark', monthWord: 'monthMark', dayWord: 'dayMark' } as const;

/** "(year uncertain, day approximate)": marks on single components. */
function takeComponentMarks(s: Scanner, draft: Draft): boolean {
  const start = s.at;
  s.at++;
  for (;;) {
    const word = senseAt(s)?.is;
    if (word !== 'yearWord' && word !== 'monthWord' && word !== 'dayWord') break;
    s.at++;
    let sense = takeSense(s, 'mark');
    if (!sense) break;
    do {
      draft[COMPONENT[word]] = joinMarks(draft[COMPONENT[word]], sense.mark);
      takeSense(s, 'and');
      sense = takeSense(s, 'mark');
    } while (sense);
    if (isSign(s, ')')) {
      s.at++;
      return true;
    }
    if (!isSign(s, ',')) break;
    s.at++;
  }
  s.at = start;
  return false;
}

/** A mark in brackets: "(?)", "[?]", "(approx.)", "(or so)". */
function takeBracketed(s: Scanner): Mark {
  const close = isSign(s, '(') ? ')' : ']';
  const sense = senseAt(s, 1);
  const isRough = sense?.is === 'tail' && sense.tail === 'roughly';
  const inner = sense?.is === 'mark' ? sense.mark : isRough ? '~' : signMark(s, 1);
  if (inner === '' || !isSign(s, close, 2)) return '';
  s.at += 3;
  return inner;
}

/** What stood after a date: a mark for it alone, and one for all of the range that it ends. */
interface Suffix {
  own: Mark;
  whole: Mark;
}

/** The marks after a date: "?", "(?)", "ish", "or so". One that is glued to it holds for it alone. */
export function takeSuffix(s: Scanner, draft: Draft): Suffix {
  const suffix: Suffix = { own: '', whole: '' };
  for (;;) {
    const sign = signMark(s);
    const sense = senseAt(s);
    if (sign !== '') {
      const side = peek(s)?.glued === true ? 'own' : 'whole';
      suffix[side] = joinMarks(suffix[side], sign);
      s.at++;
    } else if (isSign(s, '(') || isSign(s, '[')) {
      if (isSign(s, '(') && takeComponentMarks(s, draft)) continue;
      const mark = takeBracketed(s);
      if (mark === '') return suffix;
      suffix.whole = joinMarks(suffix.whole, mark);
    } else if (sense?.is === 'tail' && sense.tail === 'roughly') {
      suffix.own = joinMarks(suffix.own, '~');
      s.at++;
    } else if (sense?.is === 'mark' && endsAfter(s)) {
      suffix.whole = joinMarks(suffix.whole, sense.mark);
      s.at++;
    } else if (isSign(s, ',') && senseAt(s, 1)?.is === 'mark' && s.at + 2 === s.pieces.length) s.at++;
    else return suffix;
  }
}

/** Whether nothing follows the next word but a closing bracket or a comma. */
const endsAfter = (s: Scanner): boolean => {
  const next = peek(s, 1);
  return next === undefined || next.text === ']' || next.text === ')' || next.text === ',';
};
