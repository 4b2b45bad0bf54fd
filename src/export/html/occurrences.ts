import { placeWords, restrictedMark, titleLine } from './entry.ts';
import { h, type Markup } from './markup.ts';
import type { Unit } from './unit.ts';

/** More lines than these are no answer any more, and are gathered under the folder or the group they stand in. */
const SINGLY = 12;
const GATHERED = 40;

/** Where something occurs: thing by thing if that is few, else folder by folder, else group by group. */
export function occurrences(everywhere: readonly Unit[]): Markup {
  const units = everywhere.filter(({ depth }) => depth > 0);
  if (units.length === 0) return h`<p class="f">Named for the collection as a whole.</p>`;
  if (units.length <= SINGLY)
    return h`<ul class="at">${units.map((unit) => h`<li>${lineOf(unit)}</li>`)}</ul>`;
  return h`<details><summary>In ${units.length} entries</summary><ul class="at">${[...gathered(units)].map(
    ([unit, count]) => h`<li>${lineOf(unit)}${count > 1 && h` <span class="q">${count} entries</span>`}</li>`,
  )}</ul></details>`;
}

function gathered(units: readonly Unit[]): Map<Unit, number> {
  const deepest = Math.max(...units.map(({ depth }) => depth));
  for (let depth = deepest - 1; depth > 1; depth--) {
    const groups = countedAt(units, depth);
    if (groups.size <= GATHERED) return groups;
  }
  return countedAt(units, 1);
}

function countedAt(units: readonly Unit[], depth: number): Map<Unit, number> {
  const counts = new Map<Unit, number>();
  for (const unit of units) {
    const group = upTo(unit, depth);
    counts.set(group, (counts.get(group) ?? 0) + 1);
  }
  return counts;
}

const upTo = (unit: Unit, depth: number): Unit =>
  unit.above === undefined || unit.depth <= depth ? unit : upTo(unit.above, depth);

const lineOf = (unit: Unit): Markup => {
  const { component } = unit;
  return h`<a href="#${component.id}">${titleLine(component)}</a> ${placeWords(unit)}${restrictedMark(unit)}`;
};
