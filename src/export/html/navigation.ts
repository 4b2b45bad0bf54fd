import type { Context } from './context.ts';
import { h, type Markup } from './markup.ts';
import { isolated } from './prose.ts';
import { termParts } from './terms.ts';

/** The parts of the page, and the groups of the collection. */
export function navigation(context: Context): Markup {
  const { register, top } = context;
  const link = (id: string, words: string) => h`<li><a href="#${id}">${words}</a></li>`;
  const groups = top.children.filter(({ children }) => children.length > 0);
  // The search is hidden until a script is there, and so is the way to it.
  return h`<nav aria-label="Parts of this page"><ul>
<li hidden><a href="#find:words">Find</a></li>
${link('part:story', 'The collection')}
<li><a href="#part:contents">Contents</a>${groups.length > 0 && h`<ul>${groups.map(({ component }) => h`<li><a href="#${component.id}">${isolated(component.title)}</a></li>`)}</ul>`}</li>
${register.agents.size > 0 && link('part:people', 'People')}
${termParts(context).map(({ id, title }) => link(id, title))}
${register.boxes.length > 0 && link('part:boxes', 'Box by box')}
${link('part:about', 'About this description')}
</ul></nav>\n`;
}
