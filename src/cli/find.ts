import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { type Command, InvalidArgumentError } from 'commander';
import { JSON_OPTION, printJson, printLines } from './options.ts';
import { progress } from './progress.ts';

interface Options {
  kind?: string;
  person?: string;
  from?: number;
  to?: number;
  box?: string;
  most: number;
  json?: true;
}

export function findCommand(program: Command): void {
  program
    .command('find')
    .description('say where a thing is: box, folder, position')
    .argument('[DIR]', 'the catalogue folder (default: ".")')
    .argument('[WORDS...]', 'what to look for: words, years, names, a reference code')
    .option('--kind <KIND>', 'only things of a kind, such as letter')
    .option('--person <NAME>', 'only things made by somebody or about them, by any form of the name')
    .option('--from <YEAR>', 'only things of this year or later', year)
    .option('--to <YEAR>', 'only things of this year or earlier', year)
    .option('--box <NUMBER>', 'only things in this box')
    .option('--most <N>', 'how many things to show', count, 10)
    .option(...JSON_OPTION)
    .addHelpText(
      'after',
      '\nSlips in typing are forgiven, and accents may be left out. A phrase stands in quotation marks within those of' +
        '\nthe command line: \'"last crossing"\'. Years may be written 1927, 1920s or 1915-1920.' +
        '\nAn index is kept in the catalogue folder (.kinfonds-find); it may be deleted.' +
        '\nExample: kinfonds find quill-papers last crossing --kind photograph',
    )
    .action((dir: string | undefined, words: string[], options: Options) =>
      run(program, dir, words, options),
    );
}

async function run(
  program: Command,
  dir: string | undefined,
  words: string[],
  options: Options,
): Promise<void> {
  const { most, json, ...filters } = options;
  const usage = (message: string) => program.error(`error: ${message}`, { exitCode: 2 });
  const { from = 0, to = 9999 } = filters;
  if (from > to) return usage(`--from ${from} is after --to ${to}`);
  const place = told(dir, words);
  if (place === undefined)
    return usage(`neither “${dir}” nor the current folder is a catalogue folder, one with a collection.yaml`);
  // Side by side, for each import by itself costs time.
  const [find, { localDay }, say] = await Promise.all([
    import('../find/index.ts'),
    import('../catalogue/local-day.ts'),
    json ? undefined : import('../find/say.ts'),
  ]);
  const question = find.questionOf(place.wanted, filters);
  if (question.units.length === 0 && Object.keys(filters).length === 0)
    return usage('nothing to look for; name some words, or --kind, --person, --from, --to or --box');
  // An answer from an index comes too soon for a bar, and may do without the stream for it.
  let bar: ReturnType<typeof progress> | undefined;
  const step = (name: string) => {
    bar ??= progress(find.STEPS);
    bar(name);
  };
  const version = program.version() ?? '';
  const found = await find
    .find(place.folder, question, { version, today: localDay(), most, step })
    .finally(() => bar?.());
  if (found.found === 0) process.exitCode = 1;
  if (say === undefined) {
    const { asJson } = await import('../find/as-json.ts');
    return printJson(asJson(found));
  }
  printLines(say.sayHits(found));
  for (const line of say.sayRest(found)) process.stderr.write(`${line}\n`);
}

/**
 * Parts the folder from the words: the first argument is the folder where it is a catalogue; if it is none but the
 * current folder is one, it is a word; else it was meant as a folder.
 */
function told(dir: string | undefined, words: string[]): { folder: string; wanted: string[] } | undefined {
  if (dir === undefined) return { folder: '.', wanted: words };
  if (isCatalogue(dir)) return { folder: dir, wanted: words };
  if (isCatalogue('.')) return { folder: '.', wanted: [dir, ...words] };
  return existsSync(dir) ? { folder: dir, wanted: words } : undefined;
}

const isCatalogue = (folder: string): boolean => existsSync(join(folder, 'collection.yaml'));

function year(text: string): number {
  if (!/^\d{1,4}$/.test(text)) throw new InvalidArgumentError('It is a year, such as 1927.');
  return Number(text);
}

function count(text: string): number {
  if (!/^[1-9]\d{0,6}$/.test(text)) throw new InvalidArgumentError('It is a number from 1 on.');
  return Number(text);
}
