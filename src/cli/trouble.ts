import { CatalogueError } from '../catalogue/finding.ts';
import { printFindings } from './findings.ts';

/** Says on standard error what went wrong, in the terms of whoever called. @returns the exit code */
export function report(error: unknown): number {
  if (error instanceof CatalogueError) {
    printFindings(error.findings, process.stderr);
    process.stderr.write(
      `${error.findings.length === 1 ? 'One problem' : `${error.findings.length} problems`}; nothing was changed.\n`,
    );
  } else {
    process.stderr.write(`kinfonds: ${error instanceof Error ? error.message : String(error)}\n`);
    if (process.env.KINFONDS_TRACE !== undefined && error instanceof Error)
      process.stderr.write(`${error.stack}\n`);
  }
  return 1;
}
