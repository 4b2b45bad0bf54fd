import type { Component, Extent } from '../../catalogue/component.ts';
import type { Context } from './context.ts';
import { copiesOf } from './copies.ts';
import { dateWords, extentWords, restrictedMark } from './entry.ts';
import { agentLinks, factsOf, language } from './facts.ts';
import { keeper } from './keeper.ts';
import { h, joined, type Markup } from './markup.ts';
import { generalNotes, type NoteField, notesOf, otherFields } from './notes.ts';
import { isolated, prose } from './prose.ts';

/** What a reader wants to know first, in this order; the rest stands behind it. */
const FIRST: readonly NoteField[] = [
  'biographicalHistory',
  'scopeAndContent',
  'arrangement',
  'accessConditions',
  'useConditions',
  'preferredCitation',
];

/** The head of the page: what it is, of when, of whom, and the story in short. */
export function opening({ top, aid }: Context): Markup {
  const { component } = top;
  const { title, subtitle } = aid.control;
  return h`<header id="part:top">
<p class="over" dir="auto">${title === component.title ? 'Finding aid' : title}</p>
<h1 dir="auto"><bdi class="n">${component.title}</bdi></h1>
${component.dates.length > 0 && h`<p class="when">${dateWords(component.dates)}</p>`}
${subtitle !== undefined && h`<p class="sub" dir="auto">${subtitle}</p>`}
${component.abstract !== undefined && h`<div class="lede">${prose(component.abstract)}</div>`}
</header>`;
}

/** The story of the collection: DACS chapter 1 at a glance, then what the description says at length. */
export function story(context: Context): Markup {
  const { top } = context;
  const { component } = top;
  const notes = [
    ...FIRST.flatMap((field) => notesOf(component, [field])),
    ...notesOf(component, otherFields([...FIRST, 'abstract'])),
    ...generalNotes(component),
  ];
  return h`<section id="part:story"><h2>The collection</h2>
<dl class="glance">${glance(component, context)}</dl>
${restrictedMark(top)}${copiesOf(top, context)}
${notes.map(({ head, texts }) => h`<h3 dir="auto">${head}</h3>${texts.flatMap(prose)}`)}
</section>`;
}

function glance(component: Component, context: Context): Markup[] {
  const { creators, dates, repository, languages, referenceCode } = component;
  const told = new Set(['By', 'Extent', 'Languages', 'Kept by']);
  const asWords = (_: string, words: Markup) => words;
  const isPart = ({ type, coverage }: Extent) => type !== 'materialtype' && coverage === 'part';
  const whole = extentWords(
    { ...component, extents: component.extents.filter((one) => !isPart(one)) },
    asWords,
  );
  const boxes = extentWords({ extents: component.extents.filter(isPart) }, asWords);
  return [
    ...row('Who', joined(agentLinks(creators, context), ', ')),
    ...row('When', dateWords(dates)),
    ...row('How much', whole),
    ...row('Kept in', boxes),
    ...row('Where', repository === undefined ? undefined : keeper(repository)),
    ...row('Languages', joined(languages.map(language), ', ')),
    ...row('Reference code', referenceCode === undefined ? undefined : isolated(referenceCode)),
    ...factsOf(component, context)
      .filter(({ label }) => !told.has(label))
      .flatMap(({ label, words }) =>
        label === 'People' ? row('People in it', h`${words}${others(context)}`) : row(label, words),
      ),
  ];
}

/** The way to those who are named at single things only. */
function others({ register, top: { component } }: Context): Markup | false {
  const here = new Set([...component.creators, ...component.people].map(({ agent }) => agent));
  return register.agents.size > here.size && h`, <a href="#part:people">and others</a>`;
}

/** A term and what is said of it; nothing where nothing is said. */
export const row = (term: string, words: Markup | undefined): Markup[] =>
  words === undefined || words.html === '' ? [] : [h`<div><dt>${term}</dt><dd>${words}</dd></div>`];
