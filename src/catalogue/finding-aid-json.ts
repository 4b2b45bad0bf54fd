import { type FindingAid, findingAid } from './finding-aid.ts';
import { once } from './once.ts';
import { fieldsOf } from './schema-at.ts';

// In UTF-16 units: small parts are joined into pieces of about this size.
const PIECE = 1 << 16;

/**
 * A finding aid as JSON, in pieces: a unit of description and each of its fields on a line of its own. Keys come in
 * the order of the model, whatever their order in `aid`; what is undefined or an empty list is left out. The same
 * finding aid always gives the same bytes.
 */
export function* findingAidToJson(aid: FindingAid): Generator<string> {
  let text = '';
  for (const part of object(aid, layoutOf())) {
    text += part;
    if (text.length < PIECE) continue;
    yield text;
    text = '';
  }
  yield `${text}\n`;
}

type Schema = Parameters<typeof fieldsOf>[0];
type Values = Readonly<Record<string, unknown>>;
type Write = (value: unknown) => string;

/** A field, and how it is written: worked out once for all objects of a kind, not for each of them. */
interface Field {
  key: string;
  /** Its place in the order of the model. */
  place: number;
  /** What stands before its value where it comes first, and where it does not. */
  first: string;
  next: string;
  write: Write;
  /** How the objects in it are written, where those are on several lines. */
  lines?: (isList: boolean) => Layout;
}

/** The fields of an object on several lines. */
interface Layout {
  /** By their keys, in the order of the model. */
  fields: ReadonlyMap<string, Field>;
  indent: string;
}

const IN_COMMON = new Set(['dates', 'extents', 'languages', 'creators']);
// Their objects have fields of so much text that each field needs a line of its own.
const ON_LINES = new Set(['collection', 'control', 'recipient', 'people', 'children']);

/** How finding aids are laid out. */
function layoutOf(): Layout {
  const writers = once((schema: Schema) => writer(schema));
  // Many units have these in common, as one and the same list.
  const shared = once((schema: Schema): Write => once(writers(schema)));
  const layouts = once((schema: Schema) =>
    once((indent: string): Layout => {
      const inner = `${indent}  `;
      const fields = fieldsOf(schema).map(([key, field], place): [string, Field] => {
        const first = `\n${inner}${JSON.stringify(key)}: `;
        const write = (IN_COMMON.has(key) ? shared : writers)(field);
        const own = { key, place, first, next: `,${first}`, write };
        if (!ON_LINES.has(key)) return [key, own];
        return [key, { ...own, lines: (isList) => layouts(field)(isList ? `${inner}  ` : inner) }];
      });
      return { fields: new Map(fields), indent };
    }),
  );
  return layouts(findingAid)('');
}

const isNothing = (value: unknown) =>
  value === undefined || (typeof value === 'object' && Array.isArray(value) && value.length === 0);

/** The fields that have something in them, in the order of the model: a third of all there are, in most units. */
function filled(values: Values, fields: ReadonlyMap<string, Field>): Field[] {
  const found: Field[] = [];
  let last = -1;
  let inOrder = true;
  for (const key in values) {
    if (isNothing(values[key])) continue;
    const field = fields.get(key);
    if (field === undefined) continue;
    if (field.place < last) inOrder = false;
    last = field.place;
    found.push(field);
  }
  return inOrder ? found : found.sort((a, b) => a.place - b.place);
}

/** An object on several lines. The units of description are parts of their own: they need not be in memory together. */
function* object(values: Values, { fields, indent }: Layout): Generator<string> {
  let text = '{';
  let isFirst = true;
  for (const { key, first, next, write, lines } of filled(values, fields)) {
    const value = values[key];
    text += isFirst ? first : next;
    isFirst = false;
    if (lines === undefined) text += write(value);
    else if (Array.isArray(value)) {
      const layout = lines(true);
      let before = `[\n${layout.indent}`;
      for (const one of value) {
        yield text + before;
        yield* object(one, layout);
        text = '';
        before = `,\n${layout.indent}`;
      }
      text = `\n${indent}  ]`;
    } else {
      yield text;
      yield* object(value as Values, lines(false));
      text = '';
    }
  }
  yield isFirst ? '{}' : `${text}\n${indent}}`;
}

/** How a value is written on one line. */
function writer(schema: Schema): Write {
  // A component is made of components: what is in a field is looked at when the first value is written.
  let fields: (readonly [key: string, label: string, write: Write])[] | undefined;
  const write: Write = (value) => {
    if (typeof value === 'string') return quoted(value);
    if (typeof value !== 'object' || value === null) return JSON.stringify(value);
    if (Array.isArray(value)) return `[${value.map(write).join(', ')}]`;
    fields ??= fieldsOf(schema).map(([key, field]) => [key, `${JSON.stringify(key)}: `, writer(field)]);
    let text = '';
    for (const [key, label, writeField] of fields) {
      const each = (value as Values)[key];
      if (isNothing(each)) continue;
      text += (text === '' ? '{ ' : ', ') + label + writeField(each);
    }
    return text === '' ? '{}' : `${text} }`;
  };
  return write;
}

/** A text as JSON. Short ones of plain English are looked through here, which is sooner done than calling for it. */
function quoted(text: string): string {
  if (text.length > SHORT) return JSON.stringify(text);
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (code < BLANK || code >= DELETE || code === QUOTE || code === BACKSLASH) return JSON.stringify(text);
  }
  return `"${text}"`;
}

const SHORT = 100;
const [BLANK, DELETE, QUOTE, BACKSLASH] = [0x20, 0x7f, 0x22, 0x5c];
