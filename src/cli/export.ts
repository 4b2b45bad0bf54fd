import { join, relative, resolve, sep } from 'node:path';
import type { Command } from 'commander';
import type { FindingAid } from '../catalogue/finding-aid.ts';
import { FORMAT_NAMES, type FormatName } from '../catalogue/format-names.ts';
import type { Pictures } from '../export/formats.ts';
import { DIR, formats, JSON_OPTION, printJson, SCHEMAS_OPTION, schemasFolder } from './options.ts';
import { progress } from './progress.ts';

interface Options {
  to?: FormatName[];
  out?: string;
  withoutRestricted?: true;
  schemas?: string;
  json?: true;
}

export function exportCommand(program: Command): void {
  program
    .command('export')
    .description('write the finding aid in open standards, and validate it')
    .argument(...DIR)
    .option(
      '--to <FORMATS>',
      `${FORMAT_NAMES.join(', ')}: several of them parted by commas, or all (default: what the recipient in collection.yaml wants, else ead3)`,
      formats,
    )
    .option('--out <DIR>', 'folder to write into (default: finding-aid in the catalogue folder)')
    .option('--without-restricted', 'leave out what is restricted, and what only that tells of')
    .option(...SCHEMAS_OPTION, schemasFolder)
    .option(...JSON_OPTION)
    .addHelpText(
      'after',
      '\nWhat is restricted is described all the same, and marked as such; read it before you show it to anybody.' +
        '\nOnly the page (html) and Dublin Core name no digital copies of it.' +
        '\nExample: kinfonds export quill-papers --to ead3,csv --out finding-aid',
    )
    .action(async (folder: string, options: Options) => {
      const { to, out = join(folder, 'finding-aid'), withoutRestricted: open, schemas, json } = options;
      const { loadCatalogue } = await import('../catalogue/load.ts');
      const { localDay } = await import('../catalogue/local-day.ts');
      const { arrangement } = await import('../arrange/index.ts');
      const { exportFindingAid } = await import('../export/index.ts');
      if (resolve(out) === resolve(folder)) {
        // A finding-aid.json among list and settings is a finding aid that was taken in.
        program.error('error: --out must be another folder than that of the catalogue', { exitCode: 2 });
      }
      const catalogue = await loadCatalogue(folder);
      const wanted = to ?? catalogue.settings.recipient?.formats ?? ['ead3'];
      const bar = progress(1 + wanted.length);
      bar('arranging');
      const arranged = arrangement(catalogue, localDay());
      const { withoutRestricted } = await import('../export/without-restricted.ts');
      const aid = open ? withoutRestricted(arranged.aid) : arranged.aid;
      const pictures = wanted.includes('html') ? await drawPictures(folder, aid) : new Map();
      const result = await exportFindingAid(aid, wanted, out, {
        places: { folder: schemas },
        // A finding aid that was taken in says itself where its copies are.
        ...(catalogue.base === undefined && { copiesAt: addressFrom(out, folder) }),
        pictures,
        step: bar,
      }).finally(() => bar());
      const { printNotes, printValidation } = await import('./validation.ts');
      const { notHeldIn, printExported, printNotHeld } = await import('./exported.ts');
      if ('invalid' in result) {
        process.exitCode = 1;
        if (json) return printJson(result);
        for (const validation of result.invalid) printValidation(validation, process.stderr);
        printNotes(result.invalid, process.stderr);
        process.stderr.write('Nothing was written; an earlier export is as it was.\n');
        return;
      }
      const notHeld = catalogue.base === undefined ? undefined : await notHeldIn(aid, wanted);
      if (json) return printJson({ ...result, ...(notHeld !== undefined && { notHeld }) });
      printExported(result.written, out);
      // Of the formats only this may have nothing to write; who asks for all of them does not miss it.
      const isAll = wanted.length === FORMAT_NAMES.length;
      if (!isAll && wanted.includes('eac-cpf') && !result.written.some(({ format }) => format === 'eac-cpf'))
        process.stderr.write(NOBODY_KNOWN);
      printNotHeld(notHeld ?? []);
      const { review } = await import('../review/index.ts');
      const { countFindings } = await import('./findings.ts');
      const { sayCommand } = await import('../catalogue/say-command.ts');
      const { findings } = review(catalogue, arranged);
      if (findings.length > 0) {
        process.stderr.write(
          `There is more to say of it (${countFindings(findings)}): ${sayCommand('check', folder)}\n`,
        );
      }
    });
}

const NOBODY_KNOWN =
  'eac-cpf: there is nothing to write, for of nobody more than the name is known. Say more under "people" in collection.yaml.\n';

/** The address of a file of the catalogue as seen from another folder. */
const addressFrom = (from: string, catalogue: string) => (file: string) =>
  relative(resolve(from), resolve(catalogue, file)).split(sep).join('/');

/** Small pictures of the copies that the page may show; of what is restricted none is made. */
async function drawPictures(folder: string, aid: FindingAid): Promise<Pictures> {
  const { thumbnailsOf } = await import('../copies/thumbnails.ts');
  const { everyUnit, unitOf } = await import('../export/html/unit.ts');
  const { isPath } = await import('../copies/index.ts');
  const copies = [...everyUnit(unitOf(aid.collection))]
    .filter(({ isClosed }) => !isClosed)
    .flatMap(({ component }) => component.digitalCopies.map(({ file }) => file));
  const bar = progress(2 * new Set(copies.filter(isPath)).size);
  const { thumbnails } = await thumbnailsOf(folder, copies, {
    step: () => bar('drawing small pictures'),
  }).finally(() => bar());
  return thumbnails;
}
