import type { Block } from './blocks.ts';
import type { Label } from './labels-of.ts';
import { isolated, paragraphOf } from './paragraph.ts';
import { cleanText } from './text-breaks.ts';
import { MM, type Typesetter } from './typesetter.ts';

// In points. Letters below 6 points cannot be read at arm's length (from memory).
const LEAST = 6;
// A number that is looked for from above the box stays larger than all else, by as much of its own size.
const NUMBER_KEEPS = 0.62;
// In millimetres: the height of the area for which the sizes below are meant, that of a label of one inch.
const MEANT_FOR = 21;
// The largest and smallest that a label of another height makes of them.
const LARGEST = 2.4;
const SMALLEST = 0.75;

/** Texts and how they are set, before the fonts are known. */
interface Draft {
  what: string;
  text: string | undefined;
  beside?: string | undefined;
  weight?: 'bold';
  size: number;
  /** How much of its size it keeps, however little room there is. */
  keeps?: number;
  oneLine?: true;
  spare?: true;
  above?: number;
  at?: 'bottom';
}

/**
 * What is set on a label, the first most important: what a person looks for in a box is the number, then the title and
 * the dates; the groups, the collection and the code bring a folder back that lay on a table.
 * @param height of the area in points
 */
export function faceOf(label: Label, height: number, setter: Typesetter): Block[] {
  const scale = Math.min(LARGEST, Math.max(SMALLEST, height / (MEANT_FOR * MM)));
  const drafts = label.of === 'folder' ? folderFace(label) : boxFace(label);
  return drafts.flatMap((draft) => blockOf(draft, scale, setter));
}

function folderFace({
  type,
  number,
  part,
  box,
  title,
  thing,
  dates,
  series,
  collection,
  codes,
  care,
}: Label): Draft[] {
  return [
    {
      what: 'number',
      text: numbered(type, part === undefined ? [number] : [number, `(${part})`]),
      beside: box === undefined ? undefined : numbered(box.type, [box.number]),
      weight: 'bold',
      size: 14,
      keeps: NUMBER_KEEPS,
      oneLine: true,
    },
    { what: 'title', text: alone(title), weight: 'bold', size: 9.5, above: 1.5 },
    { what: 'thing', text: alone(thing), size: 7.5, oneLine: true, spare: true },
    { what: 'dates', text: alone(dates), size: 9, above: 0.5 },
    { what: 'care', text: alone(care), weight: 'bold', size: 8, oneLine: true, above: 0.5 },
    { what: 'series', text: path(series), size: 7, above: 1, at: 'bottom' },
    {
      what: 'collection',
      text: alone(collection),
      beside: alone(codes),
      size: 7,
      oneLine: true,
      at: 'bottom',
    },
  ];
}

function boxFace({
  type,
  number,
  part,
  folders,
  care,
  title,
  dates,
  series,
  collection,
  codes,
}: Label): Draft[] {
  const holds =
    folders === undefined ? undefined : numbered(/[-,]/.test(folders) ? 'Folders' : 'Folder', [folders]);
  return [
    {
      what: 'number',
      text: numbered(type, [number]),
      beside: alone(care),
      weight: 'bold',
      size: 20,
      keeps: NUMBER_KEEPS,
      oneLine: true,
    },
    { what: 'folders', text: holds, weight: 'bold', size: 11 },
    {
      what: 'title',
      text: alone(title === undefined || part === undefined ? title : `${title} (${part})`),
      weight: 'bold',
      size: 9.5,
      above: 1,
    },
    { what: 'dates', text: alone(dates), size: 9, above: 0.5 },
    { what: 'series', text: list(series), size: 7.5, above: 1, at: 'bottom' },
    {
      what: 'collection',
      text: alone(collection),
      beside: alone(codes),
      size: 7.5,
      oneLine: true,
      at: 'bottom',
    },
  ];
}

// "1 of 3" stays on one line.
const alone = (text: string | undefined): string | undefined =>
  text === undefined ? undefined : cleanText(text).replace(/\((\d+) of (\d+)\)$/, '($1\u00A0of\u00A0$2)');

const numbered = (type: string, parts: readonly string[]): string =>
  [cleanText(type), ...parts.map((part) => isolated(cleanText(part)))].join(' ');

const path = (titles: readonly string[]): string =>
  titles.map((title) => isolated(cleanText(title))).join(' / ');

const list = (titles: readonly string[]): string =>
  titles.map((title) => isolated(cleanText(title))).join('; ');

function blockOf(draft: Draft, scale: number, setter: Typesetter): Block[] {
  const {
    what,
    text,
    beside,
    weight = 'regular',
    size,
    keeps = 0,
    oneLine,
    spare,
    above = 0,
    at = 'top',
  } = draft;
  if (text === undefined || text === '') return [];
  const full = Math.max(LEAST, size * scale);
  return [
    {
      what,
      paragraph: paragraphOf(text, weight, setter),
      ...(beside !== undefined && beside !== '' && { beside: paragraphOf(beside, weight, setter) }),
      weight,
      size: full,
      least: Math.max(LEAST, full * keeps),
      oneLine: oneLine === true,
      ...(spare && { spare }),
      above: above * scale,
      at,
    },
  ];
}
