import type { Measure } from './sheets.ts';
import { MM, type Typesetter } from './typesetter.ts';

type Way = 'across' | 'down';

const THIN = 0.4;
// In points.
const FIGURE = 5.5;

/** Draws a line from one point to another; along the way of the ruler first, then beside it. In millimetres. */
function line(
  { document }: Typesetter,
  [x, y]: Measure,
  way: Way,
  along: number,
  from: number,
  to: number,
): void {
  const at = (beside: number): [number, number] =>
    way === 'across' ? [(x + along) * MM, (y + beside) * MM] : [(x + beside) * MM, (y + along) * MM];
  document.moveTo(...at(from)).lineTo(...at(to));
}

function figure(
  setter: Typesetter,
  [x, y]: Measure,
  way: Way,
  along: number,
  beside: number,
  text: string,
): void {
  const width = setter.width('regular', text) * FIGURE;
  const [left, base] =
    way === 'across'
      ? [(x + along) * MM - width / 2, (y + beside) * MM]
      : [(x + beside) * MM - (beside < 0 ? width : 0), (y + along) * MM + FIGURE * 0.36];
  setter.draw(text, 'regular', FIGURE, left, base);
}

/**
 * A ruler: millimetres on one side, eighths of an inch on the other.
 * @param centre of the ruler in millimetres
 * @param room how long the page is that way, in millimetres
 */
export function ruler(setter: Typesetter, centre: Measure, way: Way, room: number): void {
  const { document } = setter;
  const length = Math.min(100, Math.floor((room - 20) / 10) * 10);
  const start: Measure =
    way === 'across' ? [centre[0] - length / 2, centre[1]] : [centre[0], centre[1] - length / 2];
  const [across, down] = way === 'across' ? [length, 0] : [0, length];
  document.moveTo(start[0] * MM, start[1] * MM).lineTo((start[0] + across) * MM, (start[1] + down) * MM);
  for (let mm = 0; mm <= length; mm++) {
    const tick = mm % 10 === 0 ? 4 : mm % 5 === 0 ? 3 : 2;
    line(setter, start, way, mm, 0, -tick);
  }
  const eighths = Math.floor((length / 25.4) * 8);
  for (let eighth = 0; eighth <= eighths; eighth++) {
    const tick = eighth % 8 === 0 ? 4 : eighth % 4 === 0 ? 3 : 2;
    line(setter, start, way, (eighth * 25.4) / 8, 0, tick);
  }
  document.lineWidth(THIN).stroke('#000000');
  const [before, after] = way === 'across' ? [-4.6, 6.2] : [-4.8, 4.8];
  for (let mm = 0; mm <= length; mm += 10)
    figure(setter, start, way, mm, before, mm === 0 ? '0 mm' : String(mm));
  for (let inch = 0; inch * 8 <= eighths; inch++)
    figure(setter, start, way, inch * 25.4, after, inch === 0 ? '0 in' : String(inch));
}

// In millimetres, to both sides of the edge: printers are seldom out by more.
const REACH = 4;

/** A scale over the edge of a label, on which it can be read how far the real edge lies from the printed one. */
export function scale(setter: Typesetter, edge: Measure, way: Way): void {
  for (let mm = -REACH; mm <= REACH; mm++) {
    const tick = mm === 0 ? 4 : mm % 2 === 0 ? 2.5 : 1.5;
    line(setter, edge, way, mm, 0, tick);
    // Between its ends there is no room for figures; the marks are counted from the printed edge.
    if (Math.abs(mm) < REACH) continue;
    figure(setter, edge, way, mm, way === 'across' ? -0.8 : 4.6, mm > 0 ? `+${mm}` : `−${-mm}`);
  }
  setter.document.lineWidth(THIN).stroke('#000000');
}
