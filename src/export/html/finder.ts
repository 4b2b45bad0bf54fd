import type { Context } from './context.ts';
import { h, type Markup } from './markup.ts';
import { sayShelved } from './place.ts';
import type { Entry } from './register.ts';
import { isThing } from './unit.ts';

/** By number within the words: box 2 before box 10. */
export const inOrder = (one: string, other: string): number =>
  one.localeCompare(other, 'en', { numeric: true, sensitivity: 'base' }) ||
  (one < other ? -1 : one > other ? 1 : 0);

/** The search. It needs a script, so it is hidden until one is there; what it searches is the page itself. */
export function finder({ register }: Context): Markup {
  const boxes = register.boxes.map((entry): [string, Entry<unknown>] => [
    sayShelved({ outer: entry.what, inner: [] }),
    entry,
  ]);
  const kinds = register.terms
    .filter(({ what, units }) => what.type === 'genre' && units.some(isThing))
    .map((entry): [string, Entry<unknown>] => [entry.what.term, entry]);
  return h`<form id="part:find" role="search" aria-label="Find in this collection" hidden>
<p class="words"><label for="find:words">Find</label><input id="find:words" type="search" autocomplete="off" spellcheck="false" enterkeyhint="search" aria-describedby="find:help"></p>
<p id="find:help" class="help">A word or two, from any part of the description. Small mistakes in spelling do no harm.</p>
<p class="narrow"><span><label for="find:from">From the year</label><input id="find:from" inputmode="numeric" autocomplete="off" size="5"></span>
<span><label for="find:to">to</label><input id="find:to" inputmode="numeric" autocomplete="off" size="5"></span>
${choice('box', 'Box', 'any box', boxes)}${choice('kind', 'Kind', 'any kind', kinds)}
<span><input id="find:copy" type="checkbox"><label for="find:copy">with a digital copy</label></span>
<button type="reset">Clear</button></p>
<p id="find:chosen"></p>
<p id="find:said" role="status"></p>
</form>
<noscript><p>Search by years, box and kind needs scripts, which are turned off here. The browser’s own search goes through everything on this page.</p></noscript>
<div id="part:found" hidden><ol class="units"></ol><button type="button">Show more</button></div>`;
}

function choice(
  name: string,
  label: string,
  any: string,
  entries: readonly (readonly [string, Entry<unknown>])[],
): Markup | undefined {
  if (entries.length < 2) return undefined;
  const options = entries
    .toSorted(([one], [other]) => inOrder(one, other))
    .map(([words, { anchor }]) => h`<option value="${anchor}">${words}</option>`);
  return h`<span><label for="find:${name}">${label}</label><select id="find:${name}"><option value="">${any}</option>${options}</select></span>`;
}
