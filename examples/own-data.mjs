// Makes EAD3 of data of one's own, without a catalogue folder: a database, a web form, a spreadsheet read elsewhere.
// Run it with: node examples/own-data.mjs FILE
import { writeFileSync } from 'node:fs';
import { displayDate, FORMATS, findingAidSchema, readDate, validateXml } from 'kinfonds';

// What somebody keeps in a database of their own, about a family that never was.
const box = [
  { no: 1, what: 'Ferry log, Hollin Ferry', when: '1911-1913', group: 'Ferry', count: 1, unit: 'volumes' },
  {
    no: 2,
    what: 'Ada to Nils on the flood',
    when: '6 April 1913',
    group: 'Letters',
    count: 1,
    unit: 'letters',
  },
  { no: 3, what: 'Letters from Applegarth', when: 'c. 1920', group: 'Letters', count: 12, unit: 'letters' },
  { no: 4, what: 'Tickets, unused', when: '', group: 'Ferry', count: 40, unit: 'tickets' },
];

/** Dates as people write them, into EDTF for machines and the form of DACS 2.4 for readers. */
function dates(written) {
  const reading = readDate(written === '' ? 'undated' : written);
  if (reading.kind !== 'date') return [{ expression: reading.kind === 'undated' ? 'undated' : written }];
  return [{ expression: displayDate(reading.edtf), edtf: reading.edtf }];
}

const item = ({ no, what, when, count, unit }, referenceCode) => ({
  id: `thing-${no}`,
  level: 'item',
  referenceCode,
  title: what,
  dates: dates(when),
  extents: [{ type: 'materialtype', coverage: 'whole', quantity: count, unit }],
  containers: [{ type: 'box', number: '1' }],
});

const groups = [...new Set(box.map(({ group }) => group))];
const keeper = { name: 'Quill family', address: ['Ellersby'], country: 'US' };
const english = { code: 'eng', name: 'English' };

// The schema fills in what may be left out, and says of everything else what is wrong with it, and where.
const aid = findingAidSchema.parse({
  format: 'kinfonds finding aid',
  version: 1,
  control: {
    recordId: 'quill-boathouse',
    title: 'Finding aid of the Quill boathouse papers',
    maintenanceAgency: keeper,
    languages: [english],
    conventions: [{ abbreviation: 'DACS', citation: 'Describing Archives: A Content Standard' }],
    rights: [{ citation: 'The description may be used freely.' }],
    history: [{ type: 'created', date: '2026-01-01', agent: 'a database of our own', agentType: 'machine' }],
  },
  people: [{ id: 'quill-family', type: 'family', name: 'Quill family' }],
  collection: {
    id: 'boathouse',
    level: 'collection',
    referenceCode: 'QB',
    title: 'Quill boathouse papers',
    dates: dates('1911-c. 1920'),
    extents: [{ type: 'carrier', coverage: 'whole', quantity: 1, unit: 'boxes' }],
    creators: [{ agent: 'quill-family' }],
    repository: keeper,
    languages: [english],
    scopeAndContent: 'What was found in the boathouse at Hollin Ferry when it was cleared.',
    accessConditions: { statement: 'Open to everybody.' },
    children: groups.map((group, index) => ({
      id: `group-${index + 1}`,
      level: 'series',
      referenceCode: `QB/${index + 1}`,
      title: group,
      children: box
        .filter((row) => row.group === group)
        .map((row, at) => item(row, `QB/${index + 1}/${at + 1}`)),
    })),
  },
});

const [, , target = 'ead3.xml'] = process.argv;
const [ead3] = FORMATS.ead3(aid);
const text = [...ead3.content].join('');
const { valid, schema, messages } = await validateXml(Buffer.from(text), target);
for (const { line, says } of messages) console.error(`line ${line}: ${says}`);
if (valid) writeFileSync(target, text);
console.log(
  `${target}: ${valid ? 'valid' : 'not valid, and not written'}, by ${schema.name} ${schema.version}`,
);
process.exitCode = valid ? 0 : 1;
