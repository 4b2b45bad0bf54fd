import { csvRecord } from '../catalogue/csv-cell.ts';
import { mediaTypeOf } from '../copies/media-types.ts';
import type { CopyToGive } from './copies-to-give.ts';

const HEADINGS = [
  'file',
  'original name',
  'reference code',
  'format',
  'media type',
  'bytes',
  'width (pixels)',
  'height (pixels)',
  'pages',
  'seconds',
  'tells where it was made',
  'SHA-256',
  'remark',
];

/** What is to be said of a file that is not there, or not whole. */
const REMARKS = {
  missing: 'not in this package: there was no such file',
  empty: 'not in this package: the file was empty',
  unreadable: 'not in this package: the file could not be read',
  'not a file': 'not in this package: it was no file',
  'leads out': 'not in this package: it was a link to another place',
  damaged: 'the file breaks off before its end, or makes no sense at its beginning',
} as const;

/** The technical facts of each copy, read anew when the package was made: `technical-facts.csv`, RFC 4180. */
export function* technicalFacts(copies: readonly CopyToGive[]): Generator<string> {
  yield `\uFEFF${csvRecord(HEADINGS)}`;
  for (const { path, name, code, facts } of copies) {
    const { mediaType, bytes, width, height, pages, seconds, hasLocation, sha256, trouble } = facts;
    yield csvRecord([
      name === undefined ? undefined : `copies/${name}`,
      path,
      code,
      mediaType === undefined ? undefined : mediaTypeOf(mediaType)?.name,
      mediaType,
      ...[name === undefined ? undefined : bytes, width, height, pages, seconds].map((number) =>
        number?.toString(),
      ),
      hasLocation === true ? 'yes' : undefined,
      sha256,
      trouble === undefined ? undefined : REMARKS[trouble],
    ]);
  }
}
