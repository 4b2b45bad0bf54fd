import { setTexts } from './fit.ts';
import { paragraphOf } from './paragraph.ts';
import { areaOf, closed, drawLines } from './pdf.ts';
import { ruler, scale } from './rulers.ts';
import { cornerOf, labelsOn, type Measure, type Sheet } from './sheets.ts';
import { MM, openDocument, type Typesetter } from './typesetter.ts';

// In millimetres: how far the corner marks reach beyond the labels.
const MARK = 3;
const THIN = 0.4;

/**
 * A page to hold behind a sheet of labels: the outline of each with its number, marks at the corners, rulers, scales
 * at the edges of the first and the last label, and what to do with them.
 * @param shift as it will be given for the labels, in millimetres
 */
export async function calibrationPdf(sheet: Sheet, shift: Measure = [0, 0]): Promise<Uint8Array> {
  const setter = await openDocument(sheet.page, `Test page for labels: ${sheet.name}`);
  const { document } = setter;
  document.addPage();
  document.save().translate(shift[0] * MM, shift[1] * MM);
  outlines(sheet, setter);
  cornerMarks(sheet, setter);
  const last = labelsOn(sheet) - 1;
  const [width, height] = sheet.label;
  const [left, top] = cornerOf(sheet, 0);
  const [endLeft, endTop] = cornerOf(sheet, last);
  // The right and lower edge of the first label and the left and upper one of the last: those are never off the page.
  scale(setter, [left + width, top + height / 2], 'across');
  scale(setter, [left + width / 2, top + height], 'down');
  if (last > 0) {
    scale(setter, [endLeft, endTop + height / 2], 'across');
    scale(setter, [endLeft + width / 2, endTop], 'down');
  }
  const crossed = rulers(sheet, setter);
  document.restore();
  instructions(sheet, shift, crossed, setter);
  return closed(setter);
}

function outlines(sheet: Sheet, { document, draw }: Typesetter): void {
  for (let place = 0; place < labelsOn(sheet); place++) {
    const [x, y] = cornerOf(sheet, place);
    const [width, height] = sheet.label;
    document.lineWidth(THIN).rect(x * MM, y * MM, width * MM, height * MM);
    document.stroke('#000000');
    const area = areaOf(sheet, place);
    draw(String(place + 1), 'bold', 9, x * MM + area.x, y * MM + area.y + 8);
  }
}

function cornerMarks(sheet: Sheet, { document }: Typesetter): void {
  const [left, top] = cornerOf(sheet, 0);
  const [endLeft, endTop] = cornerOf(sheet, labelsOn(sheet) - 1);
  const [width, height] = sheet.label;
  for (const x of [left, endLeft + width]) {
    for (const y of [top, endTop + height]) {
      document.moveTo((x - MARK) * MM, y * MM).lineTo((x + MARK) * MM, y * MM);
      document.moveTo(x * MM, (y - MARK) * MM).lineTo(x * MM, (y + MARK) * MM);
    }
  }
  document.lineWidth(1).stroke('#000000');
}

/** A ruler across the page and one down it. @returns the labels that they cross */
function rulers(sheet: Sheet, setter: Typesetter): Set<number> {
  const { columns, rows, page, label } = sheet;
  // In the last row but one, where there are as many, and in the last column.
  const row = Math.max(0, rows - 2);
  const [, rowTop] = cornerOf(sheet, row * columns);
  const [columnLeft] = cornerOf(sheet, columns - 1);
  ruler(setter, [page[0] / 2, rowTop + label[1] / 2], 'across', page[0]);
  ruler(setter, [columnLeft + label[0] * 0.75, page[1] / 2], 'down', page[1]);
  const crossed = new Set<number>();
  for (let place = 0; place < labelsOn(sheet); place++)
    if (Math.floor(place / columns) === row || place % columns === columns - 1) crossed.add(place);
  return crossed;
}

const STEPS = [
  'Print this page on plain paper at 100\u00A0% (“actual size”), never fitted to the page.',
  'Lay a real ruler on the printed ones: 0 to 100 must be 100 mm. If it is not, the printer still scales.',
  'Hold this page behind a sheet of labels, edge to edge, against a window or a lamp.',
  'Count on the scales at label 1 by how many mm the right and the lower edge of the real label miss the printed ones. To the right and below is plus. The last label should show the same.',
];

/** What to do, a step to a label if there are enough that no ruler crosses. */
function instructions(sheet: Sheet, shift: Measure, crossed: ReadonlySet<number>, setter: Typesetter): void {
  const said = `${shift[0]}x${shift[1]}`;
  const already = shift.some((side) => side !== 0) ? ` This page was moved by ${said}; add to that.` : '';
  const steps = [
    ...STEPS,
    `Print the labels with both, right then down: --shift 0.5x-1 moves them half a millimetre right and one up.${already}`,
    'The numbers here are those for --start, where a sheet is half used.',
  ];
  const all = Array.from({ length: labelsOn(sheet) }, (_, place) => place);
  const { columns } = sheet;
  const last = all.length - 1;
  const scales = new Set([0, 1, columns, last, last - 1, last - columns]);
  const free = all.filter((place) => !scales.has(place) && !crossed.has(place));
  const places = free.length === 0 ? [0] : free.slice(0, steps.length);
  const each = Math.ceil(steps.length / places.length);
  places.forEach((place, index) => {
    const area = areaOf(sheet, place);
    const indent = 19;
    const blocks = steps.slice(index * each, (index + 1) * each).map((text) => ({
      what: 'step',
      paragraph: paragraphOf(text, 'regular' as const, setter),
      weight: 'regular' as const,
      size: 9,
      least: 5,
      oneLine: false,
      above: 4,
      at: 'top' as const,
    }));
    // In the first label, clear of the scale at its right edge.
    const beside = place === 0 ? MARK * 4 * MM : 0;
    const { lines } = setTexts(blocks, { width: area.width - indent - beside, height: area.height }, setter);
    drawLines(
      lines.map((line) => ({ ...line, x: line.x + indent })),
      sheet,
      place,
      shift,
      setter,
    );
  });
}
