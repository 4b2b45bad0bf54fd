/**
 * The rows of a table in Markdown, as the texts of their cells.
 * @param heading what stands over its first column, marks and all
 * @throws Error where there is not just one such table
 */
export function rowsUnder(document: string, heading: string): string[][] {
  const [, behind, more] = document.split(`\n| ${heading} |`);
  if (behind === undefined || more !== undefined)
    throw new Error(`There is to be one table whose first column is ${heading}.`);
  const lines = behind.split('\n').slice(2);
  const end = lines.findIndex((line) => !line.startsWith('|'));
  return lines.slice(0, end < 0 ? lines.length : end).map((line) =>
    line
      .split('|')
      .slice(1, -1)
      .map((cell) => cell.trim()),
  );
}

/** What a text names as code, between backticks. */
export const codeIn = (text = ''): string[] => [...text.matchAll(/`([^`]+)`/g)].map(([, name = '']) => name);
