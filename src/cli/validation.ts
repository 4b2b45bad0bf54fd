import type { Validation, ValidationMessage } from '../xml/validate.ts';
import { coloured } from './colour.ts';

/** Says what came of holding a file against its schema: which schema spoke, and each fault with its line. */
export function printValidation(validation: Validation, stream: NodeJS.WriteStream): void {
  const { file, format, schema, valid, notice, messages, more, remarks } = validation;
  const verdict = coloured(valid ? 'valid' : 'not valid', valid ? 'green' : 'red', stream);
  const by =
    schema === undefined
      ? ''
      : `, by the ${schema.kind === 'published' ? 'published schema' : 'profile of this project'} (${schema.name} ${schema.version})`;
  stream.write(`${file}: ${verdict}${format === undefined ? '' : ` ${format}`}${by}\n`);
  if (notice !== undefined) stream.write(`  ${notice}\n`);
  printMessages(messages, stream);
  if (more > 0) stream.write(`  and ${more} more.\n`);
  if (remarks.length > 0) stream.write('  Valid, yet doubtful:\n');
  printMessages(remarks, stream);
  if (schema?.note !== undefined) stream.write(`  ${schema.note}\n`);
}

function printMessages(messages: readonly ValidationMessage[], stream: NodeJS.WriteStream): void {
  for (const { line, column, path, says, engine } of messages) {
    const where = [`line ${line}`, column === undefined ? undefined : `column ${column}`, path];
    stream.write(`  ${where.filter((part) => part !== undefined).join(', ')}\n    ${says}\n`);
    if (engine !== undefined) stream.write(`    ${coloured(`libxml2: ${engine}`, 'dim', stream)}\n`);
  }
}
