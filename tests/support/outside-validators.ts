import { spawnSync } from 'node:child_process';
import { basename } from 'node:path';

/** What a program said, line by line. @throws Error where it cannot be run, or ends with a status that is no verdict */
function linesOf(program: string, args: readonly string[], verdicts: readonly number[]): string[] {
  const { error, status, stdout, stderr } = spawnSync(program, args, {
    encoding: 'utf8',
    maxBuffer: 1 << 28,
  });
  if (error !== undefined) throw error;
  if (!verdicts.includes(status ?? -1))
    throw new Error(`${program} ended with ${status}: ${stderr.slice(0, 2000)}`);
  return `${stdout}\n${stderr}`.split('\n');
}

/**
 * The files that xmllint finds invalid by a W3C Schema, by their names; it opens no connection.
 * @throws Error where it gives no verdict on one of them: its last line on each is "validates" or "fails to validate"
 */
export function invalidByXmllint(schema: string, files: readonly string[]): string[] {
  const args = ['--nonet', '--noout', '--schema', schema, ...files];
  const lines = new Set(linesOf('xmllint', args, [0, 3]));
  return files
    .filter((file) => {
      const fails = lines.has(`${file} fails to validate`);
      if (!fails && !lines.has(`${file} validates`)) throw new Error(`xmllint gave no verdict on ${file}.`);
      return fails;
    })
    .map((file) => basename(file));
}

/**
 * The files that jing finds invalid by a RELAX NG schema, by their names.
 * @throws Error where it ends with a fault that names none of the files
 */
export function invalidByJing(schema: string, files: readonly string[]): string[] {
  const lines = linesOf('jing', [schema, ...files], [0, 1]);
  const named = files.filter((file) => lines.some((line) => line.startsWith(`${file}:`)));
  // Debian's starter may warn about a library that newer versions of Java bring themselves.
  const stray = lines.find(
    (line) =>
      line !== '' && !line.startsWith('[warning]') && !files.some((file) => line.startsWith(`${file}:`)),
  );
  if (stray !== undefined) throw new Error(`jing: ${stray}`);
  return named.map((file) => basename(file));
}
