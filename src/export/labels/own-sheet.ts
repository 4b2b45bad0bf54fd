import { A4, LETTER, type Measure, SHEETS, type Sheet } from './sheets.ts';

/** A sheet, or what is wrong with the words for it. */
type ReadSheet = { sheet: Sheet } | { trouble: string };

const PARTS = ['page', 'label', 'first', 'step', 'labels'] as const;
type Part = (typeof PARTS)[number];

const UNITS: Record<string, number> = { mm: 1, cm: 10, in: 25.4, '': 1 };
const MEASURE = /^([+-]?[\d.]+)\s*(mm|cm|in)?\s*[x×]\s*([+-]?[\d.]+)\s*(mm|cm|in)?$/i;
const EXAMPLE = 'page 210x297, label 70x37, first at 0x0.5, step 70x37';
// In millimetres. What is smaller can hold no label that is read; what is larger is no sheet.
const SMALLEST: Measure = [20, 10];
const LARGEST = 2000;
// In millimetres: sheets are measured to a tenth, and the sum of such measures may be a little more than the page.
const SLACK = 0.2;

/**
 * Reads what `--sheet` says: the name of a known sheet, or measures of one's own, width before height, in millimetres
 * or with a unit: `page 210x297, label 70x37, first at 0x0.5, step 70x37`. Without `step` the labels touch; without
 * `labels 3x8` there are as many as fit; without `first at` they are in the middle of the page.
 */
export function readSheet(text: string): ReadSheet {
  const name = text.trim().toLowerCase().replaceAll('×', 'x').replace(/\s+/g, ' ');
  const known = SHEETS.find((sheet) => sheet.name.toLowerCase() === name);
  if (known !== undefined) return { sheet: known };
  if (!/\b(?:page|label)\b/.test(name)) {
    const names = SHEETS.map((sheet) => sheet.name).join(', ');
    return {
      trouble: `The sheets known by name are ${names}. For any other give its measures in mm, width before height, such as "${EXAMPLE}".`,
    };
  }
  const given: Partial<Record<Part, Measure>> = {};
  for (const words of name.split(/[,;]/).map((part) => part.trim())) {
    if (words === '') continue;
    const [, first = '', rest = ''] = /^(\S+)(?: at)? (.+)$/.exec(words) ?? [];
    const part = PARTS.find((one) => one === first);
    if (part === undefined)
      return {
        trouble: `“${words}” is none of page, label, first at, step, labels. An example: "${EXAMPLE}".`,
      };
    if (given[part] !== undefined) return { trouble: `“${part}” is given twice.` };
    const measure = part === 'page' ? (paper(rest) ?? readMeasure(rest)) : readMeasure(rest);
    if (measure === undefined)
      return { trouble: `“${words}” is no width and height. Write them in mm, such as "${part} 70x37".` };
    given[part] = measure;
  }
  return laidOut(name, given);
}

const paper = (words: string): Measure | undefined =>
  words === 'a4' ? A4 : words === 'letter' || words === 'us letter' ? LETTER : undefined;

function readMeasure(words: string): Measure | undefined {
  const [, x = '', unitOfX, y = '', unitOfY] = MEASURE.exec(words) ?? [];
  const scale = UNITS[(unitOfY ?? unitOfX ?? '').toLowerCase()] ?? 1;
  const scaleOfX = unitOfX === undefined ? scale : (UNITS[unitOfX.toLowerCase()] ?? 1);
  if (x === '' || y === '') return undefined;
  const measure: Measure = [Number(x) * scaleOfX, Number(y) * scale];
  return measure.every(Number.isFinite) ? measure : undefined;
}

function laidOut(name: string, given: Partial<Record<Part, Measure>>): ReadSheet {
  const { page, label, first: at, step = label, labels } = given;
  if (page === undefined || label === undefined || step === undefined)
    return { trouble: `Give at least the page and the label, such as "page A4, label 70x37".` };
  if (page.some((side) => side <= 0 || side > LARGEST))
    return { trouble: `A page of ${say(page)} mm is no sheet of paper.` };
  if (label[0] < SMALLEST[0] || label[1] < SMALLEST[1])
    return {
      trouble: `A label of ${say(label)} mm has no room for words; ${say(SMALLEST)} mm is the least.`,
    };
  if (step[0] < label[0] - SLACK || step[1] < label[1] - SLACK)
    return {
      trouble: `With a step of ${say(step)} mm, labels of ${say(label)} mm lie over each other. The step is the label and the gap after it.`,
    };
  if (at?.some((side) => side < 0))
    return { trouble: `The first label at ${say(at)} mm begins outside the page.` };
  if (labels?.some((count) => count < 1 || !Number.isInteger(count)))
    return { trouble: `“labels ${say(labels)}” is no number of columns and rows.` };

  const most = ([0, 1] as const).map((side) => fitting(page[side], label[side], step[side], at?.[side] ?? 0));
  const [columns = 0, rows = 0] = labels ?? most;
  const none = columns < 1 || rows < 1;
  const span: Measure = [
    (Math.max(columns, 1) - 1) * step[0] + label[0],
    (Math.max(rows, 1) - 1) * step[1] + label[1],
  ];
  const first: Measure = at ?? [middle(page[0] - span[0]), middle(page[1] - span[1])];
  const end: Measure = [first[0] + span[0], first[1] + span[1]];
  if (none || end[0] > page[0] + SLACK || end[1] > page[1] + SLACK) {
    const which = none ? 'Not one label' : `${columns} across and ${rows} down`;
    return {
      trouble: `${which} of ${say(label)} mm: that does not fit on a page of ${say(page)} mm; the last label would end at ${say(end)} mm.`,
    };
  }
  const words = `a page of ${say(page)} mm, ${columns} across and ${rows} down, each label ${round(label[0])} mm wide and ${round(label[1])} mm high`;
  return {
    sheet: { name, words, page, columns, rows, label, first, step, source: 'measures given by the user' },
  };
}

const fitting = (page: number, label: number, step: number, first: number): number =>
  Math.floor((page - first - label + SLACK) / step) + 1;

const middle = (rest: number): number => Math.max(0, rest / 2);

const round = (millimetres: number): string => String(Math.round(millimetres * 10) / 10);

const say = (measure: Measure): string => measure.map(round).join(' × ');
