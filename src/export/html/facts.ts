import type { AgentLink } from '../../catalogue/agent.ts';
import type { Component, DateStatement, LanguageUse } from '../../catalogue/component.ts';
import type { Context } from './context.ts';
import { extentWords } from './entry.ts';
import { keeper } from './keeper.ts';
import { h, joined, type Markup } from './markup.ts';
import { isolated } from './prose.ts';
import { type Term, termsOf } from './register.ts';

/** A few words about a unit, such as who made it. */
interface Fact {
  /** Over the words, where they have a line to themselves. */
  label: string;
  /** Before the words, where they stand in a line with others. */
  before: string;
  words: Markup;
}

/** What access points are called beside a thing. */
const TERMS: readonly (readonly [type: Term['type'], label: string, before: string])[] = [
  ['genre', 'Kinds', ''],
  ['place', 'Places', ''],
  ['subject', 'About', 'about '],
  ['occupation', 'Occupations', 'occupation '],
  ['function', 'Activities', 'activity '],
  ['title', 'Works', 'work '],
];

/** What is told of a unit in single words: how much, by whom, with whom, where, about what, in which language. */
export function factsOf(component: Component, context: Context): Fact[] {
  const counted = new Set<string>();
  const kindLink = (kind: string, words: Markup): Markup => {
    const known = context.register.termOf('genre', kind);
    if (known === undefined) return words;
    counted.add(kind);
    return h`<a href="#${known.anchor}">${words}</a>`;
  };
  const extent = extentWords(component, kindLink);
  const terms = termsOf(component).filter(({ type, term }) => type !== 'genre' || !counted.has(term));
  return [
    ...fact('Extent', '', extent === undefined ? [] : [extent]),
    ...fact('Level', '', component.otherLevel === undefined ? [] : [isolated(component.otherLevel)]),
    ...fact('By', 'by ', agentLinks(component.creators, context)),
    ...fact('People', 'people: ', agentLinks(component.people, context)),
    ...TERMS.flatMap(([type, label, before]) =>
      fact(
        label,
        before,
        terms.filter((term) => term.type === type).map((term) => termLink(term, context)),
      ),
    ),
    ...fact('Languages', 'in ', component.languages.map(language)),
    ...fact('Also numbered', 'also numbered ', component.otherIdentifiers.map(otherNumber)),
    ...fact(
      'Where',
      '',
      component.physicalLocation === undefined ? [] : [isolated(component.physicalLocation)],
    ),
    ...fact('Kept by', 'kept by ', component.repository === undefined ? [] : [keeper(component.repository)]),
    ...fact('Date', '', component.dates.flatMap(doubts)),
  ];
}

const otherNumber = ({ type, value }: Component['otherIdentifiers'][number]): Markup =>
  type === 'number in the list'
    ? h`${isolated(value)} in the list`
    : h`${isolated(value)} (${isolated(type)})`;

/** What was assumed in reading a date; else what the list says, where that has other figures than the words shown. */
function doubts({ note, written, expression }: DateStatement): Markup[] {
  if (note !== undefined) return [isolated(note)];
  const figures = (text: string) => text.match(/\d+/g)?.join(' ');
  if (written === undefined || figures(written) === figures(expression)) return [];
  return [h`date written “${isolated(written)}”`];
}

const fact = (label: string, before: string, words: readonly Markup[]): Fact[] =>
  words.length === 0 ? [] : [{ label, before, words: joined(words, label === 'Date' ? ' ' : ', ') }];

/** Names, each a link to its entry, with the role in which it stands here. */
export function agentLinks(links: readonly AgentLink[], { register }: Context): Markup[] {
  return links.flatMap(({ agent, role }) => {
    const entry = register.agents.get(agent);
    if (entry === undefined) return [];
    const name = h`<a href="#${entry.anchor}">${isolated(entry.what.name)}</a>`;
    return [role === undefined ? name : h`${name} (${isolated(role)})`];
  });
}

function termLink({ type, term }: Term, { register }: Context): Markup {
  const entry = register.termOf(type, term);
  return entry === undefined ? isolated(term) : h`<a href="#${entry.anchor}">${isolated(term)}</a>`;
}

/** A language; the script is told where it is another than the one this page is set in. */
export const language = ({ name, script }: LanguageUse): Markup =>
  script === undefined || script.code === 'Latn'
    ? isolated(name)
    : h`${isolated(name)} (in ${isolated(script.name)} script)`;
