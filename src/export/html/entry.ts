import type { Component, DateStatement, Extent } from '../../catalogue/component.ts';
import type { Context } from './context.ts';
import { h, joined, type Markup } from './markup.ts';
import { sayShelved, shelved } from './place.ts';
import { isolated } from './prose.ts';
import { kindOfUnit } from './register.ts';
import type { Unit } from './unit.ts';

/** The line by which a unit is known: its title and dates. */
export const titleLine = ({ title, dates }: Pick<Component, 'title' | 'dates'>): Markup =>
  dates.length === 0
    ? h`<bdi class="n">${title}</bdi>`
    : h`<bdi class="n">${title}</bdi>, ${dateWords(dates)}`;

/** Dates as readers are shown them. */
export const dateWords = (dates: readonly DateStatement[]): Markup => joined(dates.map(date), ', ');

/** The words of a date; those of bulk dates say what they are (DACS 2.4.10). */
const date = ({ type, expression }: DateStatement): Markup =>
  h`<bdi class="d">${type === 'bulk' && !/^bulk\b/i.test(expression) ? `bulk ${expression}` : expression}</bdi>`;

/** Where a unit lies, in words only: a summary must hold no links. */
export const placeWords = ({ place }: Unit): Markup | undefined =>
  place.length === 0
    ? undefined
    : h`<span class="w">${isolated(shelved(place).map(sayShelved).join('; '))}</span>`;

/** Where a unit lies, each box a link to its own list. */
export function placeLinks({ place }: Unit, { register }: Context): Markup | undefined {
  if (place.length === 0) return undefined;
  const links = shelved(place).map((one) => {
    const entry = register.boxOf(one.outer);
    const words = isolated(sayShelved(one));
    return entry === undefined
      ? h`<span class="w">${words}</span>`
      : h`<a class="w" href="#${entry.anchor}">${words}</a>`;
  });
  return joined(links, '; ');
}

/** Extents in words, the kinds of things as links to where else there are such. */
export function extentWords(
  { extents, physicalDescription }: Pick<Component, 'extents'> & Partial<Component>,
  kindLink: (kind: string, words: Markup) => Markup,
): Markup | undefined {
  const said = extents.map((extent) => {
    const words = sayOne(extent);
    return extent.type === 'materialtype' ? kindLink(kindOfUnit(extent.unit), words) : words;
  });
  if (physicalDescription !== undefined) said.push(isolated(physicalDescription));
  // A box may be called "flat box, A2".
  return said.length === 0
    ? undefined
    : joined(said, extents.some(({ unit }) => unit.includes(',')) ? '; ' : ', ');
}

const sayOne = ({ approximate, quantity, unit, dimensions, facets = [] }: Extent): Markup => {
  const more = [...facets, ...(dimensions === undefined ? [] : [dimensions])];
  const size = more.length === 0 ? '' : ` (${more.join(', ')})`;
  return isolated(`${approximate ? 'about ' : ''}${amount(quantity)} ${unit}${size}`);
};

/** 3,140: a figure that is read at a glance. */
const amount = (quantity: number): string => quantity.toLocaleString('en', { maximumFractionDigits: 6 });

/** Said at every line that is closed, so that nobody asks in vain. */
export const restrictedMark = (unit: Unit): Markup | false =>
  unit.isClosed && h`<span class="x">restricted</span>`;

/** The same for a line that may be folded up over what is closed. */
export const restrictedWithin = (unit: Unit): Markup | false =>
  restrictedMark(unit) || (holdsClosed(unit) && h`<span class="x">restricted in part</span>`);

const holdsClosed = ({ children }: Unit): boolean =>
  children.some((child) => child.isClosed || holdsClosed(child));
