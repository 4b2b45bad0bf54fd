import { spawnSync } from 'node:child_process';

/** The built program, which the tests build first. */
export const built = (module: string) =>
  JSON.stringify(new URL(`../../dist/${module}`, import.meta.url).href);

/**
 * Runs JavaScript in a program of its own: with less disk, or fewer rights. What it throws is printed.
 * @param before a command of the shell, ready for the program to follow
 */
export function run(script: string, before = 'exec'): string {
  const safe = `try { ${script} } catch (error) { console.log(error.name + ': ' + error.message) }`;
  const command = `${before} "$0" --input-type=module -e "$1"`;
  return spawnSync('bash', ['-c', command, process.execPath, safe], { encoding: 'utf8' }).stdout;
}

/** Without the system administrator's right to read and write everything. */
export function runAsAnyone(script: string): string {
  const administrator = process.getuid?.() === 0;
  return run(script, administrator ? 'exec setpriv --bounding-set=-dac_override,-dac_read_search' : 'exec');
}
