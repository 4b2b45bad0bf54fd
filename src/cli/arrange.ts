import { type Command, Option } from 'commander';
import type { Catalogue } from '../catalogue/catalogue.ts';
import { sayCommand } from '../catalogue/say-command.ts';
import { sayCount } from '../catalogue/say-count.ts';
import { DIR, JSON_OPTION, printJson, printLines } from './options.ts';

interface Options {
  compare?: true;
  things?: true;
  boxes?: true;
  settle?: true;
  move?: true;
  json?: true;
}

export function arrangeCommand(program: Command): void {
  program
    .command('arrange')
    .description('put the things into groups, order, folders and boxes, and show the result')
    .argument(...DIR)
    .addOption(
      new Option('--compare', 'weigh several ways of sorting instead').conflicts([
        'things',
        'boxes',
        'settle',
      ]),
    )
    .addOption(new Option('--things', 'list every thing in its folder').conflicts(['boxes', 'settle']))
    .addOption(new Option('--boxes', 'show what lies in which box').conflicts('settle'))
    .option('--settle', 'fix the numbers of things, folders and boxes for good')
    .option('--move', 'with --settle: give a new place to things that would now be sorted elsewhere')
    .option(...JSON_OPTION)
    .addHelpText('after', '\nExample: kinfonds arrange quill-papers --compare')
    .action(async (folder: string, { compare, settle, move, ...shown }: Options) => {
      if (move && !settle) program.error('error: --move goes with --settle', { exitCode: 2 });
      const { loadCatalogue } = await import('../catalogue/load.ts');
      const catalogue = await loadCatalogue(folder);
      if (compare) return showSortings(catalogue, shown);
      if (settle) return settleNumbers(catalogue, move === true, shown);
      return show(catalogue, shown);
    });
}

async function showSortings({ settings, things }: Catalogue, { json }: Options): Promise<void> {
  const { compareSortings } = await import('../arrange/index.ts');
  const summaries = compareSortings(settings, things);
  if (json) return printJson(summaries);
  const { sortingNotes, sortingTable } = await import('../arrange/sorting-table.ts');
  printLines([...sortingTable(summaries), '', ...sortingNotes(summaries)]);
}

async function show(catalogue: Catalogue, { things: all, boxes: shelf, json }: Options): Promise<void> {
  const { localDay } = await import('../catalogue/local-day.ts');
  const { arrangement, leftOver, outline } = await import('../arrange/index.ts');
  const arranged = arrangement(catalogue, localDay());
  const { aid, boxes, moves } = arranged;
  if (json) {
    const { findingAidToJson } = await import('../catalogue/finding-aid-file.ts');
    for (const piece of findingAidToJson(aid)) process.stdout.write(piece);
    return;
  }
  if (shelf) {
    const { shelfList } = await import('../housing/shelf-list.ts');
    const { notToBeBoxed } = await import('../review/index.ts');
    printLines(shelfList(aid.collection, boxes, notToBeBoxed(catalogue, arranged)));
  } else printLines(outline(aid.collection, all ? 'item' : 'file'));
  const left = [...leftOver(arranged.sorted)].length;
  const { folder, things } = catalogue;
  if (left > 0)
    note(
      `${left} of ${sayCount(things.length, 'thing')} ${left === 1 ? 'fits' : 'fit'} no group; to see which: ${sayCommand('check', folder)}`,
    );
  if (moves.length > 0) {
    note(
      `${sayCount(moves.length, 'settled thing')} would now be sorted elsewhere; to see which: ${sayCommand('check', folder)}`,
    );
  }
}

async function settleNumbers(catalogue: Catalogue, move: boolean, { json }: Options): Promise<void> {
  const { localDay } = await import('../catalogue/local-day.ts');
  const { CatalogueError } = await import('../catalogue/finding.ts');
  const { referenceCodes, settle } = await import('../arrange/index.ts');
  const { withNumbers } = await import('../intake/number-cells.ts');
  const { canTakeNumbers, noNumbersInto } = await import('../intake/numbers-not-written.ts');
  const { numbersToCsv } = await import('../catalogue/numbers-file.ts');
  const { writeSettled } = await import('../catalogue/settle.ts');
  const { saySettling } = await import('../arrange/say-settling.ts');
  const { inList } = await import('../catalogue/list-places.ts');
  const { stopsSettling } = await import('../review/numbers.ts');
  const settling = settle(catalogue, move, localDay());
  const stops = stopsSettling(catalogue, settling);
  if (stops.length > 0) throw new CatalogueError(inList(stops, catalogue));
  const { given, rows } = settling;
  const { listFile, settings } = catalogue;
  if (given.size > 0 && !canTakeNumbers(listFile))
    throw new CatalogueError([noNumbersInto(listFile, [...given.values()])]);
  const list = given.size === 0 ? undefined : withNumbers(catalogue.list, given, settings.list);
  const kept = await writeSettled(catalogue.folder, {
    numbers: numbersToCsv(rows, referenceCodes(catalogue.settings)),
    expected: catalogue.list,
    listFile,
    ...(list !== undefined && { list }),
  });
  if (json) return printJson(rows);
  printLines(saySettling(settling, catalogue, kept));
}

const note = (words: string) => process.stderr.write(`${words}\n`);
