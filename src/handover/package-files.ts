import { type Arrangement, arrangement } from '../arrange/index.ts';
import type { Catalogue } from '../catalogue/catalogue.ts';
import { CatalogueError, type Finding } from '../catalogue/finding.ts';
import { FORMAT_NAMES } from '../catalogue/format-names.ts';
import type { Content } from '../catalogue/write-whole.ts';
import { FORMATS } from '../export/formats.ts';
import { notToBeBoxed } from '../review/index.ts';
import type { SchemaPlaces } from '../xml/schema-folders.ts';
import { type CopyToGive, withNames } from './copies-to-give.ts';
import { despite } from './despite.ts';
import { inventory } from './inventory.ts';
import { inventoryPaper, inventoryToCsv } from './inventory-papers.ts';
import { listToCsv } from './list-csv.ts';
import { deedOfGiftChecklist } from './papers/deed-of-gift-checklist.ts';
import { letterOfOffer } from './papers/letter-of-offer.ts';
import { paperToMarkdown } from './papers/markdown.ts';
import { paperToPage } from './papers/page.ts';
import type { Paper } from './papers/paper.ts';
import { receipt } from './papers/receipt.ts';
import { readMe } from './read-me.ts';
import { type Summary, summaryOf } from './summary.ts';
import { withCopyNames } from './taken-in/copies.ts';
import { inventoryWith } from './taken-in/inventory.ts';
import { technicalFacts } from './technical-facts.ts';

/** A file that is written into a package: its path in it and its content. */
export interface PackageFile {
  path: string;
  content: Content;
  /** Whether it is XML, to be held against a schema. */
  xml?: boolean;
}

/** Why a package is made despite what must be mended. */
interface Despite {
  reason: string;
  findings: readonly Finding[];
}

/**
 * Everything in a package but the digital copies themselves, made from what is given and from nothing else.
 * @param given with rows as they stand in the list of the package, and with the copies as the family named them
 * @param findings of the review of it
 * @param today YYYY-MM-DD
 */
export function packageFiles(
  given: Catalogue,
  copies: readonly CopyToGive[],
  findings: readonly Finding[],
  today: string,
  made?: Despite,
): { files: PackageFile[]; summary: Summary } {
  const named = new Map(copies.map((copy) => [copy.path, copy]));
  const listed = given.things.map((thing) => withNames(thing, named, 'copies/'));
  const linked = given.things.map((thing) => withNames(thing, named, '../copies/'));
  const base = given.base === undefined ? {} : { base: withCopyNames(given.base, named) };
  const arranged: Arrangement = arrangement({ ...given, ...base, things: linked }, today);
  const notBoxed = notToBeBoxed({ ...given, things: linked }, arranged);
  const rows =
    given.base === undefined
      ? inventory(arranged, given.settings, notBoxed)
      : inventoryWith(given.base, arranged, given.settings, notBoxed);
  const summary = summaryOf(arranged, given, rows, copies, findings);
  const files: PackageFile[] = [
    { path: 'READ-ME-FIRST.txt', content: readMe(summary, made !== undefined) },
    ...(made === undefined ? [] : [{ path: 'despite.txt', content: despite(made.reason, made.findings) }]),
    ...(listed.length === 0 ? [] : [{ path: 'list.csv', content: listToCsv(listed) }]),
    { path: 'inventory.csv', content: inventoryToCsv(summary.rows) },
    { path: 'inventory.html', content: paperToPage(inventoryPaper(summary)) },
    { path: 'technical-facts.csv', content: technicalFacts(copies) },
    ...inBothForms('letter-of-offer', letterOfOffer(summary, today)),
    ...inBothForms('deed-of-gift-checklist', deedOfGiftChecklist(summary)),
    ...inBothForms('receipt', receipt(summary)),
  ];
  for (const format of FORMAT_NAMES) {
    for (const { path, xml, content } of FORMATS[format](arranged.aid))
      files.push({ path: `finding-aid/${path}`, content, xml });
  }
  return { files, summary };
}

const inBothForms = (name: string, paper: Paper): PackageFile[] => [
  { path: `${name}.md`, content: paperToMarkdown(paper) },
  { path: `${name}.html`, content: paperToPage(paper) },
];

/**
 * The files with their content worked out, each in XML held against the schema of its format.
 * @throws CatalogueError where one is not valid: a fault of this program, or in a finding aid that was taken in, of which
 * the profile of this project allows less than the standard
 */
export async function validated(files: readonly PackageFile[], places: SchemaPlaces): Promise<PackageFile[]> {
  const { validatorWith } = await import('../xml/validate.ts');
  const validate = validatorWith(places);
  const faults: Finding[] = [];
  const whole: PackageFile[] = [];
  for (const { path, content, xml } of files) {
    if (!xml) {
      whole.push({ path, content });
      continue;
    }
    const bytes = bytesOf(content);
    const { valid, messages, schema } = await validate(bytes, path);
    if (!valid) faults.push(invalid(path, messages, schema?.kind === 'profile'));
    whole.push({ path, content: bytes });
  }
  if (faults.length > 0) throw new CatalogueError(faults);
  return whole;
}

/** @param byProfile whether the schema that spoke is stricter than the standard */
function invalid(file: string, messages: readonly { says: string }[], byProfile: boolean): Finding {
  const said = messages.slice(0, MOST).map(({ says }) => says);
  const more = messages.length > MOST ? ` There are ${messages.length - MOST} more such faults.` : '';
  const found = `The file would not be valid: ${said.join(' ')}${more}`;
  const advice =
    'Only the profile of this project was asked, which allows less than the standard. Fetch the published schemas, and try again: kinfonds schemas --get';
  return {
    rule: 'hand-over.invalid',
    weight: 'must',
    place: { file },
    found,
    ...(byProfile && { advice }),
  };
}

/** So many faults of a file are told. */
const MOST = 5;

function bytesOf(content: Content): Uint8Array {
  if (content instanceof Uint8Array) return content;
  const pieces = typeof content === 'string' ? [content] : [...content];
  return Buffer.concat(pieces.map((piece) => (typeof piece === 'string' ? Buffer.from(piece) : piece)));
}
