import type { Control, MaintenanceEvent } from '../../catalogue/finding-aid.ts';
import { displayDate } from '../../dates/index.ts';
import type { Context } from './context.ts';
import { language } from './facts.ts';
import { keeper } from './keeper.ts';
import { webLink } from './link.ts';
import { h, joined, type Markup } from './markup.ts';
import { isolated, prose } from './prose.ts';
import { row } from './story.ts';

/** The description itself: who made it, when, by which rules, and what may be done with it (ISAD(G) 3.7, DACS 8). */
export function about({ aid }: Context): Markup {
  const { control } = aid;
  return h`<section id="part:about"><h2>About this description</h2>
<dl class="glance">${rows(control)}</dl></section>`;
}

function rows(control: Control): Markup[] {
  const { title, author, edition, publisher, publisherAddress = [], publicationDate, languages } = control;
  const { conventions, rights, sources, history, maintenanceAgency, recordId } = control;
  const published = [
    ...(publisher === undefined ? [] : [publisher]),
    ...publisherAddress,
    ...(publicationDate === undefined ? [] : [displayDate(publicationDate)]),
  ];
  return [
    ...row('Title', isolated(title)),
    ...row('Written by', author === undefined ? undefined : isolated(author)),
    ...row('Edition', edition === undefined ? undefined : isolated(edition)),
    ...row('Published', list(published)),
    ...row('Kept up by', keeper(maintenanceAgency)),
    ...row('Record', isolated(recordId)),
    ...row('Language', joined(languages.map(language), ', ')),
    ...row(
      'Rules',
      joined(
        conventions.map(({ citation, abbreviation }) =>
          abbreviation === undefined
            ? isolated(citation)
            : h`${isolated(citation)} (${isolated(abbreviation)})`,
        ),
        '; ',
      ),
    ),
    ...rights.flatMap(({ citation, address, statement }) =>
      row(
        'Rights in it',
        h`${address === undefined ? isolated(citation) : linked(address, citation)}${statement !== undefined && prose(statement)}`,
      ),
    ),
    ...row('Sources', list(sources, '; ')),
    ...row('Its history', joined(history.map(event), '; ')),
  ];
}

/** Where the address is none of the web, it still is to be read. */
const linked = (address: string, words: string): Markup => {
  const link = webLink(address, isolated(words));
  return link.html.startsWith('<a') ? link : h`${link} (${isolated(address)})`;
};

const list = (texts: readonly string[], between = ', '): Markup => joined(texts.map(isolated), between);

const event = ({ type, date, agent, description }: MaintenanceEvent): Markup =>
  h`${type} ${isolated(displayDate(date))} by ${isolated(agent)}${description !== undefined && h`: ${isolated(description)}`}`;
