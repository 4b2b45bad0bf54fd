import type { Context } from './context.ts';
import { inOrder } from './finder.ts';
import { webLink } from './link.ts';
import { h, joined, type Markup } from './markup.ts';
import { occurrences } from './occurrences.ts';
import { isolated } from './prose.ts';
import type { Entry, Term } from './register.ts';

/** The parts of the index, in order. */
const PARTS: readonly { type: Term['type']; id: string; title: string }[] = [
  { type: 'place', id: 'part:places', title: 'Places' },
  { type: 'subject', id: 'part:subjects', title: 'Subjects and occasions' },
  { type: 'genre', id: 'part:kinds', title: 'Kinds of things' },
  { type: 'occupation', id: 'part:occupations', title: 'Occupations' },
  { type: 'function', id: 'part:activities', title: 'Activities' },
  { type: 'title', id: 'part:works', title: 'Works' },
];

/** The parts of the index that this collection has. */
export const termParts = ({ register }: Context) =>
  PARTS.flatMap(({ type, ...part }) => {
    const entries = register.terms.filter(({ what }) => what.type === type);
    return entries.length === 0 ? [] : [{ ...part, entries }];
  });

/** Places, subjects and kinds, each with where it occurs. */
export function* terms(context: Context): Generator<Markup> {
  for (const { id, title, entries } of termParts(context)) {
    const sorted = entries.toSorted((one, other) => inOrder(one.what.term, other.what.term));
    yield h`<section id="${id}"><h2>${title}</h2>
<ul class="entries">${sorted.map(term)}</ul></section>\n`;
  }
}

function term({ anchor, what, units }: Entry<Term>): Markup {
  const { source, identifier } = what;
  const registered = [
    ...(source === undefined ? [] : [isolated(source)]),
    ...(identifier === undefined ? [] : [webLink(identifier, isolated(identifier))]),
  ];
  return h`<li id="${anchor}"><h3>${isolated(what.term)}</h3>
${registered.length > 0 && h`<p class="f"><span><b>Heading from</b> ${joined(registered, ', ')}</span></p>`}
${occurrences(units)}</li>\n`;
}
