import type { Above, Entry } from './entry.ts';
import { FIELD, FIELDS, type FieldName } from './fields.ts';

/** Fields whose texts come again and again; the index holds each of them once. */
const SHARED: ReadonlySet<FieldName> = new Set([
  'kind',
  'places',
  'occasion',
  'group',
  'condition',
  'size',
  'language',
]);

/** An entry as the index holds it, of what has a reference code: no names of fields, and what others have as well by its number. */
type CodedRecord = readonly [
  referenceCode: string,
  title: string,
  dates: string | 0,
  years: readonly [number | null, number | null] | 0,
  where: number,
  position: readonly [number: number, of: number] | 0,
  restricted: number | -1,
  above: readonly number[],
  creators: readonly number[],
  people: readonly number[],
  mentioned: readonly number[],
  /** The number of a field and then its texts, or the numbers of these. */
  texts: readonly (readonly [number, ...(string | number)[]])[],
];

/** The same, or of what has no reference code. */
export type EntryRecord = CodedRecord | readonly [...CodedRecord, uncoded: 1];

/** @param share gives what many have in common a number, the same for the same JSON */
export function toRecord(entry: Entry, share: (value: unknown) => number): EntryRecord {
  const { referenceCode, title, dates, years, boxes, folder, position, apart, named, restricted, texts } =
    entry;
  const record: CodedRecord = [
    referenceCode,
    title,
    dates ?? 0,
    years ?? 0,
    share({ boxes, folder, apart, named }),
    position === undefined ? 0 : [position.number, position.of],
    restricted === undefined ? -1 : share(restricted),
    entry.above.map(share),
    entry.creators,
    entry.people,
    entry.mentioned,
    Object.entries(texts).map(([name, values]) => {
      const field = name as FieldName;
      return [FIELD[field], ...(SHARED.has(field) ? values.map(share) : values)];
    }),
  ];
  return entry.uncoded ? [...record, 1] : record;
}

/** @param shared gives what a number stands for */
export function fromRecord(record: EntryRecord, shared: (number: number) => unknown): Entry {
  const [
    referenceCode,
    title,
    dates,
    years,
    where,
    position,
    restricted,
    above,
    creators,
    people,
    mentioned,
    texts,
    uncoded,
  ] = record;
  const text = (value: string | number) => (typeof value === 'string' ? value : String(shared(value)));
  return {
    referenceCode,
    ...(uncoded === 1 && { uncoded: true }),
    title,
    ...(dates !== 0 && { dates }),
    ...(years !== 0 && { years }),
    ...(shared(where) as Pick<Entry, 'boxes' | 'folder' | 'apart' | 'named'>),
    ...(position !== 0 && { position: { number: position[0], of: position[1] } }),
    ...(restricted >= 0 && { restricted: text(restricted) }),
    above: above.map((number) => shared(number) as Above),
    creators,
    people,
    mentioned,
    texts: Object.fromEntries(
      texts.map(([field, ...values]) => [FIELDS[field]?.name ?? 'other', values.map(text)]),
    ),
  };
}
