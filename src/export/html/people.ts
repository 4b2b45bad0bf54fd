import type { Agent } from '../../catalogue/agent.ts';
import { displayDate } from '../../dates/index.ts';
import type { Context } from './context.ts';
import { inOrder } from './finder.ts';
import { webLink } from './link.ts';
import { h, joined, type Markup } from './markup.ts';
import { occurrences } from './occurrences.ts';
import { isolated, prose } from './prose.ts';
import type { Entry } from './register.ts';

const headingOf = ({ authorizedForm, name }: Agent): string => authorizedForm ?? name;

/** People, families and organisations in the order of their headings: who they were, and where they occur. */
export function people(context: Context): Markup | undefined {
  const entries = [...context.register.agents.values()].toSorted((one, other) =>
    inOrder(headingOf(one.what), headingOf(other.what)),
  );
  if (entries.length === 0) return undefined;
  return h`<section id="part:people"><h2>People, families and organisations</h2>
<ul class="entries">${entries.map((entry) => person(entry, context))}</ul></section>`;
}

function person({ anchor, what, units }: Entry<Agent>, context: Context): Markup {
  const { name, history } = what;
  const heading = headingOf(what);
  return h`<li id="${anchor}"><h3>${isolated(name)}</h3>
${heading !== name && h`<p class="f" dir="auto">${heading}</p>`}
${sentences(what, context)}${history !== undefined && prose(history)}
${units.length > 0 && occurrences(units)}</li>\n`;
}

function sentences(agent: Agent, { register }: Context): Markup | undefined {
  const { type, birth, death, variants = [], occupations = [], places = [], relations = [] } = agent;
  const [began, ended] = type === 'person' ? ['Born', 'Died'] : ['From', 'To'];
  const inRole = (...roles: string[]) =>
    places.filter(({ role }) => roles.includes(role)).map(({ name }) => isolated(name));
  const kin = relations.flatMap(({ agent: id, as }) => {
    const other = register.agents.get(id);
    return other === undefined
      ? []
      : [h`${isolated(as)} <a href="#${other.anchor}">${isolated(other.what.name)}</a>`];
  });
  const told = [
    ...fact(began, [...dates(birth), ...inRole('birth')]),
    ...fact(ended, [...dates(death), ...inRole('death')]),
    ...fact('Lived', inRole('residence')),
    ...fact('Place', inRole('location')),
    ...fact('Occupation', occupations.map(isolated)),
    ...fact('Also', variants.map(isolated)),
    ...fact('Kin and ties', kin),
    ...fact('Heading from', headingSource(agent)),
  ];
  return told.length === 0 ? undefined : h`<p class="f">${joined(told, ' ')}</p>`;
}

const dates = (edtf: string | undefined): Markup[] =>
  edtf === undefined ? [] : [isolated(displayDate(edtf))];

const fact = (label: string, words: readonly Markup[]): Markup[] =>
  words.length === 0 ? [] : [h`<span><b>${label}</b> ${joined(words, ', ')}</span>`];

const headingSource = ({ source, identifier }: Agent): Markup[] => [
  ...(source === undefined ? [] : [isolated(source)]),
  ...(identifier === undefined ? [] : [webLink(identifier, isolated(identifier))]),
];
