import type { Context } from './context.ts';
import { restrictedMark } from './entry.ts';
import { inOrder } from './finder.ts';
import { h, joined, type Markup } from './markup.ts';
import { sayShelved, shelfKey, shelved } from './place.ts';
import { isolated } from './prose.ts';
import type { Register } from './register.ts';
import type { Unit } from './unit.ts';

/** The container list: what stands in which box, in the order of the shelf. */
export function boxes(context: Context): Markup | undefined {
  const entries = context.register.boxes.toSorted((one, other) =>
    inOrder(sayShelved({ outer: one.what, inner: [] }), sayShelved({ outer: other.what, inner: [] })),
  );
  if (entries.length === 0) return undefined;
  return h`<section id="part:boxes"><h2>Box by box</h2>
<ul class="boxes">${entries.map(box)}</ul></section>`;
}

type Box = Register['boxes'][number];

function box({ anchor, what, units }: Box): Markup {
  return h`<li id="${anchor}"><h3>${isolated(sayShelved({ outer: what, inner: [] }))}</h3>
<ul>${units.map((unit) => line(unit, what))}</ul></li>\n`;
}

/** What lies apart from its folder says so, or has the place of that above it; anything else names no folder. */
const outside = ({ component, above }: Unit): string =>
  component.physicalLocation !== undefined || (above !== undefined && above.place.length > 0)
    ? 'Apart'
    : 'In no folder';

/** What stands where in the box. */
function line(unit: Unit, box: Box['what']): Markup {
  const { title, dates, containers, referenceCode, id } = unit.component;
  const own = shelved(containers).filter(({ outer }) => shelfKey(outer) === shelfKey(box));
  const within = own.flatMap(({ inner: [first, ...rest] }) =>
    first === undefined ? [] : [sayShelved({ outer: first, inner: rest })],
  );
  const words = [title, ...dates.map(({ expression }) => expression)].map(isolated);
  return h`<li><span>${isolated(within.length === 0 ? outside(unit) : within.join('; '))}</span><a href="#${id}">${joined(words, ', ')}</a><span>${isolated(referenceCode ?? id)}${restrictedMark(unit)}</span></li>\n`;
}
