import { CatalogueError } from '../catalogue/finding.ts';
import { printFindings } from './findings.ts';

/** Says what went wrong, in the terms of whoever called: for machines, or in sentences. @returns the exit code */
export function report(error: unknown): number {
  if (process.argv.includes('--json')) {
    const problems = error instanceof CatalogueError ? error.findings : [{ found: messageOf(error) }];
    process.stdout.write(`${JSON.stringify({ problems }, null, 2)}\n`);
  } else if (error instanceof CatalogueError) {
    const musts = error.findings.filter(({ weight }) => weight === 'must');
    printFindings(musts, process.stderr, false);
    process.stderr.write(
      `${musts.length === 1 ? 'One problem' : `${musts.length} problems`}; nothing was changed.\n`,
    );
  } else {
    process.stderr.write(`kinfonds: ${messageOf(error)}\n`);
  }
  return 1;
}

/** The message of an error that is meant for people; of any other, which is a mistake in this program, all there is. */
function messageOf(error: unknown): string {
  if (error instanceof Error)
    return error.constructor === Error ? error.message : (error.stack ?? error.message);
  return String(error);
}
