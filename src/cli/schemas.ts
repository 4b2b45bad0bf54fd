import type { Command } from 'commander';
import type { ListedSchema } from '../xml/schemas.ts';
import { JSON_OPTION, printJson, SCHEMAS_OPTION, schemasFolder } from './options.ts';

/** Who named the folder in which a schema lies. */
const NAMED_BY: Readonly<Record<NonNullable<ListedSchema['namedBy']>, string>> = {
  '--schemas': 'by --schemas',
  KINFONDS_SCHEMAS: 'by KINFONDS_SCHEMAS',
  cache: 'fetched before',
};

export function schemasCommand(program: Command): void {
  program
    .command('schemas')
    .description('say which published schemas are on this machine')
    .option('--get', 'fetch those that are missing from their official addresses')
    .option(...SCHEMAS_OPTION, schemasFolder)
    .option(...JSON_OPTION)
    .addHelpText('after', '\nExample: kinfonds schemas --get')
    .action(async ({ get, schemas, json }: { get?: true; schemas?: string; json?: true }) => {
      const places = { folder: schemas };
      if (get) {
        const { getSchemas } = await import('../xml/get-schemas.ts');
        const got = await getSchemas({ fetch, places });
        if (got.some(({ outcome }) => outcome === 'failed')) process.exitCode = 1;
        if (json) return printJson(got);
        for (const { name, version, outcome, path, problems = [] } of got) {
          process.stdout.write(`${name} ${version}: ${outcome}${path === undefined ? '' : `, ${path}`}\n`);
          for (const problem of problems) process.stderr.write(`  ${problem}\n`);
        }
        return;
      }
      const { listSchemas } = await import('../xml/schemas.ts');
      const listed = await listSchemas(places);
      if (json) return printJson(listed);
      for (const { name, version, path, namedBy, note, profile } of listed) {
        const where =
          path === undefined
            ? `not on this machine; the ${profile} serves instead`
            : `${path} (${NAMED_BY[namedBy ?? 'cache']})`;
        process.stdout.write(`${name} ${version}: ${where}\n`);
        if (note !== undefined) process.stdout.write(`  ${note}\n`);
      }
      if (listed.some(({ path }) => path === undefined))
        process.stderr.write('To fetch those that are missing: kinfonds schemas --get\n');
    });
}
