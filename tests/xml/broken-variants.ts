import { move, one, swap } from './change-text.ts';

/** One way to break (or only to change) a sample: what is done to which file. */
export interface Variant {
  name: string;
  sample: string;
  change: (text: string) => string;
  /** Whether it is still valid; if not given, it is not. */
  valid?: boolean;
  /** What is to be remarked upon although the file is valid. */
  remark?: string;
  /** The path of the first element that is refused, worked out by hand. */
  place?: string;
}

const A = 'mss060.xml';
const B = 'EAD3test.xml';
const C = 'mc00042.xml';
const D = 'CLRC-2155.xml';
const E = 'naa213.xml';
const F = 'rbc00008.xml';
const G = 'mc00062.xml';

/** What people, programs and accidents do to finding aids. */
export const VARIANTS: readonly Variant[] = [
  // Elements where they may not be.
  {
    name: 'did moved to the end',
    place: '/ead/archdesc/accessrestrict',
    sample: A,
    change: move(one('did'), /<\/archdesc>/),
  },
  {
    name: 'control moved behind archdesc',
    place: '/ead/archdesc',
    sample: A,
    change: move(one('control'), /<\/ead>/),
  },
  { name: 'filedesc before recordid', sample: C, change: move(one('filedesc'), /<recordid/) },
  {
    name: 'unit type before quantity',
    place: '/ead/archdesc/did/physdescset/physdescstructured[1]/unittype',
    sample: A,
    change: move(one('unittype'), /<quantity>/),
  },
  {
    name: 'heading behind a paragraph',
    sample: B,
    change: move(/<head>Access|<head>Restrictions on Access<\/head>/, /<\/accessrestrict>/),
  },
  {
    name: 'component in a did',
    sample: B,
    change: swap('<unittitle>Diaries', '<c><did><unitid/></did></c><unittitle>Diaries'),
  },
  {
    name: 'first-level component in a first-level one',
    sample: B,
    change: swap(/<c02>([\s\S]*?)<\/c02>/, '<c01>$1</c01>'),
  },
  {
    name: 'an element that EAD3 has not',
    sample: C,
    change: swap('<unitid>', '<shelfmark>7</shelfmark><unitid>'),
  },
  {
    name: 'a capital letter in a name',
    sample: B,
    change: (text) => text.replaceAll('unittitle>', 'unitTitle>'),
  },
  {
    name: 'an element of another namespace in did',
    place: '/ead/archdesc/did/x:y',
    sample: C,
    change: swap('<unitid>', '<x:y xmlns:x="urn:x"/><unitid>'),
  },
  { name: 'two controls', place: '/ead/control[2]', sample: A, change: swap(one('control'), '$&$&') },
  {
    name: 'date single beside a range',
    sample: E,
    change: swap('<daterange>', '<datesingle>1950</datesingle><daterange>'),
  },
  // Elements that are missing.
  { name: 'no recordid', sample: A, change: swap(one('recordid'), '') },
  {
    name: 'no titleproper',
    place: '/ead/control/filedesc/titlestmt',
    sample: C,
    change: swap(one('titleproper'), ''),
  },
  { name: 'no control', sample: B, change: swap(one('control'), '') },
  {
    name: 'no agent in a maintenance event',
    place: '/ead/control/maintenancehistory/maintenanceevent[1]',
    sample: A,
    change: swap(one('agent'), ''),
  },
  {
    name: 'no part in a name',
    sample: D,
    change: swap(/<(persname|corpname|famname)([^>]*)>[\s\S]*?<\/\1>/, '<$1$2/>'),
  },
  { name: 'no quantity', sample: A, change: swap(one('quantity'), '') },
  {
    name: 'no did',
    place: '/ead/archdesc/dsc/c01[1]/c02[1]',
    sample: B,
    change: swap(/<c02>\s*<did>[\s\S]*?<\/did>/, '<c02>'),
  },
  { name: 'range without its end', valid: true, sample: A, change: swap(one('todate'), '') },
  { name: 'list without items', sample: B, change: swap(/<list>[\s\S]*?<\/list>/, '<list/>') },
  {
    name: 'controlaccess with nothing in it',
    sample: F,
    change: swap(one('controlaccess'), '<controlaccess/>'),
  },
  // Attributes.
  { name: 'no level on archdesc', sample: A, change: swap('<archdesc level="collection"', '<archdesc') },
  { name: 'a level that there is not', sample: E, change: swap('level="file"', 'level="pile"') },
  {
    name: 'no value on maintenancestatus',
    sample: B,
    change: swap('<maintenancestatus value="new"', '<maintenancestatus'),
  },
  {
    name: 'a maintenance status that there is not',
    sample: C,
    change: swap('<maintenancestatus value="new"', '<maintenancestatus value="fresh"'),
  },
  {
    name: 'an attribute that EAD3 has not',
    sample: B,
    change: swap('<unittitle>', '<unittitle colour="red">'),
  },
  {
    name: 'extent of no known type',
    sample: A,
    change: swap('physdescstructuredtype="carrier"', 'physdescstructuredtype="weight"'),
  },
  { name: 'no coverage of an extent', sample: A, change: swap('coverage="whole"', '') },
  { name: 'coverage that there is not', sample: F, change: swap('coverage="whole"', 'coverage="some"') },
  { name: 'digital object without its type', sample: G, change: swap('daotype="unknown"', '') },
  {
    name: 'digital object of no known type',
    sample: G,
    change: swap('daotype="unknown"', 'daotype="paper"'),
  },
  { name: 'audience that there is not', sample: A, change: swap('audience="external"', 'audience="family"') },
  {
    name: 'event of no known type',
    place: '/ead/control/maintenancehistory/maintenanceevent[2]/eventtype',
    sample: A,
    change: swap('<eventtype value="updated"', '<eventtype value="mended"'),
  },
  { name: 'emphasis that there is not', sample: A, change: swap('render="italic"', 'render="wavy"') },
  {
    name: 'two faults in one element',
    sample: B,
    change: swap('<c01 level="series"', '<c01 level="pile" colour="red"'),
  },
  // Identifiers.
  {
    name: 'an id twice',
    place: '/ead/archdesc/dsc/c01[2]',
    sample: B,
    change: swap('id="series2"', 'id="series1"'),
  },
  { name: 'an id that is none', sample: B, change: swap('id="series1"', 'id="1 series"') },
  {
    name: 'a reference to nothing',
    valid: true,
    remark: 'The attribute target of <ref> points to “nowhere”',
    sample: B,
    change: swap('target="series1"', 'target="nowhere"'),
  },
  {
    name: 'a parent that is not there',
    valid: true,
    remark: 'The attribute parent of <container> points to “nowhere”',
    sample: B,
    change: swap('<container localtype="Folder">', '<container parent="nowhere" localtype="Folder">'),
  },
  { name: 'a reference that is none', sample: B, change: swap('target="series1"', 'target="1 2"') },
  // Text where it may not be.
  { name: 'text in did', sample: B, change: swap('<container', 'Box 1 <container') },
  { name: 'text in control', sample: A, change: swap('</recordid>', '</recordid>draft') },
  { name: 'text between components', sample: E, change: swap('<c02', 'letters <c02') },
  {
    name: 'text in a name, without part',
    sample: D,
    change: swap(/<(persname|corpname|famname)([^>]*)>/, '<$1$2>Quill'),
  },
  { name: 'text in an archdesc', sample: C, change: swap('</did>', '</did>Quill') },
  { name: 'a blank where nothing may be', sample: B, change: swap('Papers of', 'Papers<lb> </lb> of') },
  {
    name: 'a blank beside a comment where nothing may be',
    sample: B,
    change: swap('Papers of', 'Papers<lb> <!-- c --></lb> of'),
  },
  {
    name: 'a blank where nothing may be, in a plain file',
    sample: C,
    change: swap('<unittitle>', '<unittitle><lb>\n</lb>'),
  },
  {
    name: 'an element and blanks where nothing may be',
    sample: C,
    change: swap('<unittitle>', '<unittitle>\n<lb>\n<lb/>\n</lb>'),
  },
  // The namespace.
  {
    name: 'the namespace misspelt',
    sample: A,
    change: swap('archivists.org/schema/', 'archivists.org/schema'),
  },
  { name: 'no namespace', sample: B, change: swap('xmlns="http://ead3.archivists.org/schema/"', '') },
  { name: 'a prefix without its namespace', sample: B, change: swap('<unitid', '<ead:unitid/><unitid') },
  // Changes that break nothing.
  {
    name: 'a comment and a processing instruction',
    valid: true,
    sample: B,
    change: swap('<unittitle>', '<!-- c --><?pi x?><unittitle>'),
  },
  {
    name: 'a schema location',
    valid: true,
    sample: A,
    change: swap(
      '<ead ',
      '<ead xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance" xsi:schemaLocation="http://ead3.archivists.org/schema/ nowhere.xsd" ',
    ),
  },
  {
    name: 'a document type with an entity of its own',
    valid: true,
    sample: C,
    change: swap('<ead ', '<!DOCTYPE ead [<!ENTITY quill "Quill">]>\n<ead '),
  },
];
