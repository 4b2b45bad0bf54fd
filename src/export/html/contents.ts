import type { Component, Extent } from '../../catalogue/component.ts';
import type { Context } from './context.ts';
import { copiesOf } from './copies.ts';
import { extentWords, placeLinks, placeWords, restrictedMark, restrictedWithin, titleLine } from './entry.ts';
import { factsOf } from './facts.ts';
import { h, joined, type Markup } from './markup.ts';
import { notesOf } from './notes.ts';
import { isolated, prose } from './prose.ts';
import { everyUnit, isThing, type Unit } from './unit.ts';
import { yearsText } from './years.ts';

/** Beyond so many lines everything begins closed, so that the page opens quickly and can be taken in at a glance. */
const OPEN_AT_MOST = 600;

/**
 * Beyond so many things a browser needs seconds to make elements of them all. Then what lies in folders waits in
 * `noscript`: without scripts it is there at once, with scripts when a folder is opened.
 */
const AT_ONCE_AT_MOST = 2500;

/** How a catalogue of its size is best shown. */
interface Manner {
  /** Whether groups lie open at first. */
  isOpen: boolean;
  /** Whether the contents of folders wait. */
  isWaiting: boolean;
}

/** The tree of all units below the collection, a line for each. */
export function* contents(context: Context): Generator<Markup> {
  const { children } = context.top;
  if (children.length === 0) return yield h`<p>Nothing below the level of the collection is described.</p>`;
  const units = [...everyUnit(context.top)];
  const things = units.filter(isThing).length;
  const manner = { isOpen: units.length - things <= OPEN_AT_MOST, isWaiting: things > AT_ONCE_AT_MOST };
  yield h`<ol class="units" id="part:list">`;
  for (const child of children) yield* unitLines(child, context, manner);
  yield h`</ol>`;
}

/** A unit and all below it, piece by piece: a large catalogue is never one text in memory. */
function* unitLines(unit: Unit, context: Context, manner: Manner): Generator<Markup> {
  if (isThing(unit)) return yield thing(unit, context);
  const { component, children } = unit;
  // A folder is a drawer to be pulled out; series and subseries lie open, as far as there are not too many folders.
  const opened = manner.isOpen && component.level !== 'file';
  const waits = manner.isWaiting && children.every(isThing);
  yield h`<li id="${component.id}" class="${hasOnly(unit) ? 'u g one' : 'u g'}"${years(unit)}><details${opened && h` open`}><summary>${heading(unit)}${onlyTitle(unit)}<span class="m">${summaryFacts(unit)}</span></summary>
<div class="b">${notes(component)}${groupFacts(component, context)}${copiesOf(unit, context)}</div>
${waits && h`<noscript>`}<ol>`;
  for (const child of children) yield* unitLines(child, context, manner);
  yield h`</ol>${waits && h`</noscript>`}</details></li>\n`;
}

/** Whether a unit is a folder with one thing in it. Its line and that of the thing are then as one. */
const hasOnly = ({ component, children }: Unit): boolean =>
  component.level === 'file' && children.length === 1 && children.every(isThing);

/** The title of the only thing in a folder, as long as the folder is closed. */
function onlyTitle(unit: Unit): Markup | undefined {
  const [only] = unit.children;
  if (!hasOnly(unit) || only === undefined || only.component.title === unit.component.title) return undefined;
  return h`<span class="o">${isolated(only.component.title)}</span>`;
}

function thing(unit: Unit, context: Context): Markup {
  const { component } = unit;
  return h`<li id="${component.id}" class="u"${years(unit)}><p class="t">${titleLine(component)}</p>
<p class="m"><a class="c" href="#${component.id}">${code(component)}</a> ${placeLinks(unit, context)}${restrictedMark(unit)}</p>${notes(component)}${facts(component, context)}${copiesOf(unit, context)}</li>\n`;
}

const years = ({ years }: Unit): Markup | undefined =>
  years === undefined ? undefined : h` data-y="${yearsText(years)}"`;

const code = ({ referenceCode, id }: Component): Markup => h`${isolated(referenceCode ?? id)}`;

/** What is a group of groups gets a heading; what is a folder gets a line. */
function heading({ component, depth }: Unit): Markup {
  const title = titleLine(component);
  if (component.level === 'file' || component.level === 'item') return h`<span class="t">${title}</span>`;
  const tag = `h${Math.min(depth + 2, 6)}`;
  return h`${{ html: `<${tag} class="t">` }}${title}${{ html: `</${tag}>` }}`;
}

/** As many counts as one line takes; the others stand with the rest of what is told of a group. */
const COUNTS_IN_LINE = 3;

const inLine = (component: Component): Extent[] =>
  component.extents.filter(({ type }) => type === 'materialtype').slice(0, COUNTS_IN_LINE);

function summaryFacts(unit: Unit): Markup[] {
  const { component } = unit;
  const extent = extentWords({ extents: inLine(component) }, (_, words) => words);
  return [
    h`<span class="c">${code(component)}</span>`,
    ...[placeWords(unit), extent && h`<span class="q">${extent}</span>`, restrictedWithin(unit)].filter(
      (part) => part !== undefined && part !== false,
    ),
  ];
}

/** What is told of a group beyond its line. Where it lies says already how many folders it takes. */
function groupFacts(component: Component, context: Context): Markup | undefined {
  const told = new Set(inLine(component));
  const hasPlace = component.containers.length > 0;
  const extents = component.extents.filter(
    (extent) =>
      !told.has(extent) && !(hasPlace && extent.type === 'carrier' && /^folders?$/.test(extent.unit)),
  );
  return facts({ ...component, extents }, context);
}

function facts(component: Component, context: Context): Markup | undefined {
  const told = factsOf(component, context).map(({ before, words }) => h`${before}${words}`);
  return told.length === 0 ? undefined : h`<p class="f">${joined(told, ' · ')}</p>`;
}

/** What a thing is about needs no heading; what else is said of it begins with one. */
const notes = (component: Component): Markup[] =>
  notesOf(component).map(({ head, texts }) => {
    if (head === 'What is here') return h`${texts.flatMap(prose)}`;
    const [first = '', ...rest] = texts;
    return h`<p><b>${isolated(head)}</b> ${isolated(first)}</p>${rest.flatMap(prose)}`;
  });
