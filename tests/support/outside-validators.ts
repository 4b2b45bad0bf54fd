import { spawnSync } from 'node:child_process';
import { basename } from 'node:path';

/**
 * Which of the files a program finds invalid, by their names, in one run. Both programs write a line for each fault
 * that begins with the file's path; xmllint also ends with a line for each file.
 * @throws Error where the program cannot be run at all
 */
function invalid(program: string, options: readonly string[], files: readonly string[]): string[] {
  const { error, stdout, stderr } = spawnSync(program, [...options, ...files], {
    encoding: 'utf8',
    maxBuffer: 1 << 28,
  });
  if (error !== undefined) throw error;
  const lines = `${stdout}\n${stderr}`.split('\n');
  return files
    .filter((file) => lines.some((line) => line.startsWith(`${file}:`)))
    .map((file) => basename(file));
}

/** The files that xmllint finds invalid by a W3C Schema; it opens no connection. */
export const invalidByXmllint = (schema: string, files: readonly string[]) =>
  invalid('xmllint', ['--nonet', '--noout', '--schema', schema], files);

/** The files that jing finds invalid by a RELAX NG schema. */
export const invalidByJing = (schema: string, files: readonly string[]) => invalid('jing', [schema], files);
