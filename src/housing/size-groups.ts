import { INCH } from './measures.ts';
import type { SizeToken } from './size-tokens.ts';
import { FILLERS, ROUND_LABELS, THICK_LABELS } from './size-units.ts';

/** A number that may be a measure. */
interface Measure {
  value: number;
  /** Millimetres of its unit, where one is written. */
  unit?: number;
  negative: boolean;
  /** Whether it is written like 1,200 or 1.200: in millimetres, that is no decimal sign. */
  thousands: boolean;
}

/** Measures that belong to one thing: `8 x 10 in`, `20 cm high, 15 cm wide`, `7 in`. */
export interface MeasureGroup {
  measures: Measure[];
  labelled: boolean;
  round: boolean;
  /** Whether it says only how thick something is. */
  thick: boolean;
  /** Whether it is the second of "8 to 10 in". */
  ranged: boolean;
}

const FEET = 12 * INCH;
const METRE = 1000;
const THOUSANDS = /^[1-9]\d{0,2}[.,]\d{3}$/;

/** Gathers the measures of a phrase, thing by thing; weights, counts and running times are left out. */
export function measureGroups(tokens: readonly SizeToken[]): MeasureGroup[] {
  const groups: MeasureGroup[] = [];
  let group: MeasureGroup | undefined;
  let between: 'nothing' | 'cross' | 'range' | 'word' | 'break' = 'word';
  let label: string | undefined;
  for (const token of tokens) {
    if (token.is === 'number') {
      if (token.unit === 'other') {
        between = 'word';
        continue;
      }
      const { value, unit, negative, text } = token;
      const thousands = THOUSANDS.test(text);
      const measure: Measure = { value, negative, thousands, ...(unit !== undefined && { unit }) };
      const last = group?.measures.at(-1);
      if (between === 'nothing' && last !== undefined && goesOn(last, measure)) {
        const part = unit ?? (last.unit === METRE ? METRE / 100 : INCH);
        last.value = (last.value * (last.unit ?? 1) + value * part) / (last.unit ?? 1);
        continue;
      }
      const joins = between === 'cross' || (between !== 'word' && between !== 'range' && group?.labelled);
      if (group === undefined || !joins) {
        group = { measures: [], labelled: false, round: false, thick: false, ranged: between === 'range' };
        groups.push(group);
      }
      group.measures.push(measure);
      if (label !== undefined) mark(group, label);
      label = undefined;
      between = 'nothing';
    } else if (token.is === 'label') {
      // "9 in tall" and "height 9 in": the label stands behind its number or before it.
      if (group !== undefined && between === 'nothing') mark(group, token.word);
      else label = token.word;
    } else if (token.is === 'word') {
      if (!FILLERS.has(token.word)) between = 'word';
    } else between = token.is;
  }
  return withUnits(groups);
}

function mark(group: MeasureGroup, label: string): void {
  group.labelled = true;
  group.round ||= ROUND_LABELS.has(label);
  group.thick = group.measures.length === 1 && THICK_LABELS.has(label);
}

/** 2 ft 3 in, 2' 3, 1 m 20 cm, 1 m 20: the second number is a part of the first measure. */
function goesOn(first: Measure, second: Measure): boolean {
  if (first.unit === undefined || second.negative) return false;
  if (second.unit === undefined)
    return (first.unit === FEET && second.value < 12) || (first.unit === METRE && second.value < 100);
  return first.unit > second.unit && first.unit >= FEET;
}

/** In "8 x 10 in" and "5 x 7 or 8 x 10 in" the unit is written once for all. */
function withUnits(groups: MeasureGroup[]): MeasureGroup[] {
  for (const { measures } of groups) {
    lend(measures.toReversed());
    lend(measures);
  }
  for (const [index, group] of groups.entries()) {
    const next = groups[index + 1];
    const of = (other: MeasureGroup | undefined) => other?.measures[0]?.unit;
    const unit = next?.ranged || group.measures.length > 1 ? (of(next) ?? of(groups[index - 1])) : undefined;
    if (unit === undefined) continue;
    for (const measure of group.measures) measure.unit ??= unit;
  }
  for (const { measures } of groups) {
    for (const measure of measures) if (measure.thousands && measure.unit === 1) measure.value *= 1000;
  }
  return groups;
}

function lend(measures: readonly Measure[]): void {
  let unit: number | undefined;
  for (const measure of measures) {
    if (measure.unit === undefined && unit !== undefined) measure.unit = unit;
    unit = measure.unit;
  }
}
