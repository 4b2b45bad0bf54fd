import { sayCount } from '../../catalogue/say-count.ts';
import { adviceToArchive, namesEnd } from '../../review/index.ts';
import { sayTotals } from '../inventory-papers.ts';
import type { Summary } from '../summary.ts';
import {
  type Block,
  heading,
  lines,
  list,
  NO_ADVICE,
  type Paper,
  text,
  ticks,
  withArticle,
} from './paper.ts';
import { sayLocations } from './say-locations.ts';

/** So many restricted units are named in a letter; of more, it says how many. */
const MOST = 12;

/**
 * A letter that offers a collection to an archive: what and how much it is, its state, and what the family wants.
 * @param today YYYY-MM-DD
 */
export function letterOfOffer(summary: Summary, today: string): Paper {
  const { title, code, giver, recipient, dates, creators, languages, groups } = summary;
  return {
    title: `Letter of offer: ${title}`,
    blocks: [
      text([giver.name, ...(giver.address ?? [])].join('\n\n')),
      ...(recipient === undefined
        ? [lines('To the archive')]
        : [text(['To', recipient.name, ...recipient.address].join('\n\n'))]),
      lines('Place and day'),
      text(
        `We offer you ${withArticle(title)} (reference code ${code}). This letter says what the papers are, how much there is, in what state they are, and what we should like to become of them. Nothing is agreed by it: please tell us whether you would take them, all or in part, and on what conditions.`,
      ),
      heading('What it is'),
      ...(summary.abstract === undefined ? [] : [text(summary.abstract)]),
      list(
        ...(creators.length === 0 ? [] : [`Made or gathered by: ${creators.join('; ')}`]),
        ...(dates === '' ? [] : [`Dates: ${dates}`]),
        ...(languages.length === 0 ? [] : [`Languages: ${languages.join(', ')}`]),
      ),
      heading('How much there is'),
      text(sayHowMuch(summary)),
      {
        kind: 'table',
        headings: ['Code', 'Group', 'Dates', 'How much'],
        rows: groups.map((group) => [group.code, group.title, group.dates, group.extent]),
      },
      text(
        'A finding aid in the standard forms, an inventory of boxes and folders, and the technical facts of each digital copy come with this letter.',
      ),
      heading('In what state it is'),
      ...stateOf(summary),
      heading('Who may see it'),
      ...accessOf(summary, today),
      ...digitalOf(summary),
      heading('What we should like'),
      text('We have ticked what we have in mind. All of it can be talked about.'),
      ticks(
        'To give the things for good, so that they belong to the archive.',
        'To lend them, so that they stay ours and the archive keeps them.',
        'To let the archive copy them, and have the things back.',
        'That the collection stays together under the name of the family.',
        'That we may see and copy the things ourselves at any time.',
        'That we get back what the archive does not keep.',
        'That we are asked before anything of it is published.',
      ),
      lines('Other wishes', 'Whom to ask, and how to reach them', 'Name and signature'),
      NO_ADVICE,
    ],
  };
}

function sayHowMuch({ extent, rows, copies }: Summary): string {
  const there = copies.filter(({ name }) => name !== undefined).length;
  return `${extent === '' ? '' : `${extent.replace(/\.$/, '')}: `}${sayTotals(rows, there)}.`;
}

function stateOf({ withCondition, dangers, isTakenIn }: Summary): Block[] {
  const noted = isTakenIn
    ? `The finding aid says something of the state of ${withCondition === 0 ? 'no units' : sayCount(withCondition, 'unit')}. Nobody has examined the things for this letter.`
    : withCondition === 0
      ? 'The list notes no damage. Nobody has examined the things for it as a conservator would.'
      : `The list notes the state of ${sayCount(withCondition, 'thing')}; the finding aid says it of each. It was noted by the family and not by a conservator.`;
  if (dangers.length === 0) return [text(noted)];
  return [
    text(noted),
    text(
      'Please read this before anybody opens a box. It was found by words of the list, so that there may be more. Rows are those of list.csv in the package.',
    ),
    list(
      ...dangers.map((danger) => {
        const advice = adviceToArchive(danger);
        return advice === undefined ? danger.found : `${danger.found} ${advice}`;
      }),
    ),
  ];
}

function accessOf({ access, restricted }: Summary, today: string): Block[] {
  const said = access === undefined ? [] : [text(access)];
  if (restricted.length === 0) return [...said, text('Nothing in it is restricted.')];
  const shown = restricted.slice(0, MOST);
  const more = restricted.length - shown.length;
  return [
    ...said,
    text('These are restricted. What is agreed on them should stand in the deed:'),
    list(
      ...shown.map(({ code, title, statement, until }) => {
        const said = `${code}, ${title}: ${statement.replace(/\.$/, '')}`;
        if (until !== undefined) return `${said} (until ${until})`;
        return namesEnd(statement, today) ? said : `${said} (no end is given)`;
      }),
      ...(more > 0 ? [`and ${more} more, each in the finding aid with its conditions`] : []),
    ),
  ];
}

function digitalOf({ copies }: Summary): Block[] {
  const there = copies.filter(({ name }) => name !== undefined);
  if (there.length === 0) return [];
  const many = there.length === 1 ? 'one digital copy' : `${there.length} digital copies`;
  return [
    heading('Digital copies'),
    text(
      `With the things come ${many}, the files as they were made, byte for byte. ${sayLocations(copies)} A copy stands for no original: where both are there, both are given.`,
    ),
  ];
}
