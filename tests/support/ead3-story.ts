import { accessPointsOf, child, notesOf, pair, type Story, type StoryDate, texts } from './ead-story.ts';
import { elementsOf, type Tree, textOf } from './xml-tree.ts';

/** The story that an EAD3 document tells of its collection. */
export const ead3Story = (ead: Tree): Story => component(child(ead, 'archdesc'));

function component(unit: Tree): Story {
  const did = child(unit, 'did');
  const { id, level, otherlevel } = unit.attributes;
  const below = [...elementsOf(unit, 'c'), ...elementsOf(unit, 'dsc').flatMap((dsc) => elementsOf(dsc, 'c'))];
  return {
    id,
    level: otherlevel ?? level,
    titles: texts(did, 'unittitle'),
    identifiers: elementsOf(did, 'unitid').map((unitid) => [unitid.attributes.localtype, textOf(unitid)]),
    dates: dates(did),
    extents: [...elementsOf(did, 'physdescstructured').map(extent), ...texts(did, 'physdesc')],
    creators: elementsOf(did, 'origination').flatMap((list) => elementsOf(list).map(name)),
    keeper: elementsOf(did, 'repository').flatMap((keeper) => [
      textOf(child(child(keeper, 'corpname'), 'part')),
      ...elementsOf(keeper, 'address').flatMap((lines) => texts(lines, 'addressline')),
    ]),
    abstract: texts(did, 'abstract'),
    languages: elementsOf(did, 'langmaterial').flatMap((list) => elementsOf(list).flatMap(language)),
    languageNote: elementsOf(did, 'langmaterial')
      .flatMap((list) => elementsOf(list, 'descriptivenote').flatMap((note) => texts(note, 'p')))
      .join('\n\n'),
    containers: elementsOf(did, 'container').map((box) => ({
      id: box.attributes.id,
      type: box.attributes.localtype,
      number: textOf(box),
      parent: box.attributes.parent,
    })),
    locations: texts(did, 'physloc'),
    copies: [did, ...elementsOf(did, 'daoset')].flatMap((set) => elementsOf(set, 'dao').map(copy)),
    didNotes: texts(did, 'didnote'),
    notes: notesOf(unit, 'localtype'),
    accessPoints: accessPointsOf(unit, name),
    children: below.map(component),
  };
}

const name = (heading: Tree) => {
  const { identifier, relator } = heading.attributes;
  return [heading.name, texts(heading, 'part').join(), relator, identifier].join(' | ');
};

/** A date in words stands before its structure where both are there. */
function dates(did: Tree): StoryDate[] {
  const told: StoryDate[] = [];
  let words: string | undefined;
  const parts = elementsOf(did).filter(({ name }) => name.startsWith('unitdate'));
  for (const [index, part] of parts.entries()) {
    const { unitdatetype: type, certainty } = part.attributes;
    const next = parts[index + 1];
    if (part.name === 'unitdate') {
      words = textOf(part);
      const alone = next?.name !== 'unitdatestructured' || elementsOf(next, 'datesingle').length > 0;
      if (alone) told.push({ type, words, normal: undefined, several: false, certainty: undefined });
      if (alone) words = undefined;
      continue;
    }
    const [date] = elementsOf(part);
    if (date === undefined) throw new Error('an empty structure');
    const said = date.name === 'datesingle' ? textOf(date) : words;
    told.push({ type, words: said, normal: normal(date), several: date.name === 'dateset', certainty });
    words = undefined;
  }
  return told;
}

const first = ({ attributes: { standarddate, notbefore } }: Tree) => standarddate ?? notbefore;
const last = ({ attributes: { standarddate, notafter } }: Tree) => standarddate ?? notafter;

function normal(date: Tree): string | undefined {
  if (date.name === 'datesingle') return pair(first(date), last(date));
  const [from, to] = [elementsOf(date, 'fromdate')[0], elementsOf(date, 'todate')[0]];
  if (date.name === 'daterange') return pair(from && first(from), to && last(to));
  const members = elementsOf(date).map(normal);
  if (members.includes(undefined)) return undefined;
  const ends = members.flatMap((member) => member?.split('/') ?? []).sort();
  return pair(ends[0], ends.at(-1));
}

function extent(counted: Tree): string {
  const quantity = child(counted, 'quantity');
  const about = quantity.attributes.approximate === 'true' ? 'approximately ' : '';
  const size = [...texts(counted, 'physfacet'), ...texts(counted, 'dimensions')];
  const { coverage, physdescstructuredtype: type } = counted.attributes;
  const count = `${about}${textOf(quantity)} ${textOf(child(counted, 'unittype'))}`;
  return [coverage === 'part' ? 'part' : undefined, type, count, ...size].join(' | ');
}

function language(item: Tree): string[] {
  if (item.name === 'descriptivenote') return [];
  const set = item.name === 'languageset' ? item : { ...item, children: [item] };
  const script = elementsOf(set, 'script')[0]?.attributes.scriptcode;
  return elementsOf(set, 'language').map((one) => [one.attributes.langcode, script, textOf(one)].join(' | '));
}

const copy = (dao: Tree) => ({
  href: dao.attributes.href,
  title: dao.attributes.linktitle,
  origin: dao.attributes.daotype,
  note: elementsOf(dao, 'descriptivenote')
    .flatMap((note) => texts(note, 'p'))
    .join('\n\n'),
});
