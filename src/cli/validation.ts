import type { FoundSchema } from '../xml/schemas.ts';
import type { Validation, ValidationMessage } from '../xml/validation.ts';
import { coloured } from './colour.ts';

/** So many faults of one file are shown; the rest are counted. */
const MOST = 20;

/** Which schema spoke: the publisher's, or the profile of this project, whose name says that it is ours. */
export const saySchema = ({ kind, name, version }: Pick<FoundSchema, 'kind' | 'name' | 'version'>): string =>
  kind === 'published' ? `the published schema (${name} ${version})` : `the ${name}, version ${version}`;

/** The verdict in a line: whether it is valid, as what, and which schema spoke. */
export function sayVerdict({ format, schema, valid }: Validation, stream: NodeJS.WriteStream): string {
  const verdict = coloured(valid ? 'valid' : 'not valid', valid ? 'green' : 'red', stream);
  const by = schema === undefined ? '' : `, by ${saySchema(schema)}`;
  return `${verdict}${format === undefined ? '' : ` ${format}`}${by}`;
}

/** Says what came of holding a file against its schema: which schema spoke, and each fault with its line. */
export function printValidation(validation: Validation, stream: NodeJS.WriteStream): void {
  stream.write(`${validation.file}: ${sayVerdict(validation, stream)}\n`);
  printDetails(validation, stream);
}

/** Whether there is more to say than the verdict. */
export const hasDetails = ({ notice, messages, remarks }: Validation): boolean =>
  notice !== undefined || messages.length > 0 || remarks.length > 0;

/** Says each fault, and what is doubtful. */
export function printDetails(
  { notice, messages, more, remarks }: Validation,
  stream: NodeJS.WriteStream,
): void {
  if (notice !== undefined) stream.write(`  ${notice}\n`);
  printMessages(messages.slice(0, MOST), stream);
  const left = Math.max(0, messages.length - MOST) + more;
  if (left > 0) stream.write(`  … and ${left} more; mend these first, for others may come of them.\n`);
  if (remarks.length > 0) stream.write('  Valid, yet doubtful:\n');
  printMessages(remarks, stream);
}

/** Says what a reader has to know of the schemas, once for all files. */
export function printNotes(validations: readonly Validation[], stream: NodeJS.WriteStream): void {
  const notes = new Set(validations.flatMap(({ schema }) => schema?.note ?? []));
  for (const note of notes) stream.write(`${note}\n`);
}

function printMessages(messages: readonly ValidationMessage[], stream: NodeJS.WriteStream): void {
  for (const { line, column, path, says, engine } of messages) {
    const where = [`line ${line}`, column === undefined ? undefined : `column ${column}`, path];
    stream.write(`  ${where.filter((part) => part !== undefined).join(', ')}\n    ${says}\n`);
    if (engine !== undefined) stream.write(`    ${coloured(`libxml2: ${engine}`, 'dim', stream)}\n`);
  }
}
