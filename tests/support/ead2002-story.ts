import { accessPointsOf, child, notesOf, type Story, texts } from './ead-story.ts';
import { elementsOf, type Tree, textOf } from './xml-tree.ts';

/** The story that an EAD 2002 document tells of its collection. */
export const ead2002Story = (ead: Tree): Story => component(child(ead, 'archdesc'));

function component(unit: Tree): Story {
  const did = child(unit, 'did');
  const { id, level, otherlevel } = unit.attributes;
  const below = [...elementsOf(unit, 'c'), ...elementsOf(unit, 'dsc').flatMap((dsc) => elementsOf(dsc, 'c'))];
  return {
    id,
    level: otherlevel ?? level,
    titles: texts(did, 'unittitle'),
    identifiers: elementsOf(did, 'unitid').map((unitid) => [unitid.attributes.type, textOf(unitid)]),
    dates: elementsOf(did, 'unitdate').map((date) => ({
      type: date.attributes.type,
      words: textOf(date),
      normal: date.attributes.normal,
      several: false,
      certainty: date.attributes.certainty,
    })),
    extents: elementsOf(did, 'physdesc').map(extent),
    creators: elementsOf(did, 'origination').flatMap((one) => elementsOf(one).map(name)),
    keeper: elementsOf(did, 'repository').flatMap((keeper) => [
      textOf(child(keeper, 'corpname')),
      ...elementsOf(keeper, 'address').flatMap((lines) => texts(lines, 'addressline')),
    ]),
    abstract: texts(did, 'abstract'),
    languages: elementsOf(did, 'langmaterial').flatMap((list) =>
      elementsOf(list, 'language').map((one) =>
        [one.attributes.langcode, one.attributes.scriptcode, textOf(one)].join(' | '),
      ),
    ),
    languageNote: elementsOf(did, 'langmaterial').map(languageNote).join(),
    containers: elementsOf(did, 'container').map((box) => ({
      id: box.attributes.id,
      type: box.attributes.label ?? box.attributes.type,
      number: textOf(box),
      parent: box.attributes.parent,
    })),
    locations: texts(did, 'physloc'),
    copies: [
      ...elementsOf(did, 'dao'),
      ...elementsOf(did, 'daogrp').flatMap((group) => elementsOf(group, 'daoloc')),
    ].map(copy),
    didNotes: elementsOf(did, 'note').map((note) => texts(note, 'p').join('\n\n')),
    notes: notesOf(unit, 'type'),
    accessPoints: accessPointsOf(unit, name),
    children: below.map(component),
  };
}

const name = (heading: Tree) => {
  const { authfilenumber, role } = heading.attributes;
  return [heading.name, textOf(heading), role, authfilenumber].join(' | ');
};

/** What stands behind the last language, after a full stop. */
function languageNote({ children }: Tree): string {
  const last = children.at(-1);
  return typeof last === 'string' ? last.replace(/^\. /, '') : '';
}

function extent(physdesc: Tree): string {
  const [counted] = elementsOf(physdesc, 'extent');
  if (counted === undefined) return textOf(physdesc);
  const size = [...texts(physdesc, 'physfacet'), ...texts(physdesc, 'dimensions')];
  return [physdesc.attributes.label, counted.attributes.type, textOf(counted), ...size].join(' | ');
}

const copy = (place: Tree) => ({
  href: place.attributes['xlink:href'],
  title: place.attributes['xlink:title'],
  origin: place.attributes['xlink:role'],
  note: elementsOf(place, 'daodesc')
    .flatMap((note) => texts(note, 'p'))
    .join('\n\n'),
});
