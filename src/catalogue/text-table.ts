/** A table of plain text, a line for each row; figures stand to the right, everything else to the left. */
export function textTable(rows: readonly (readonly string[])[]): string[] {
  const columns = Math.max(0, ...rows.map(({ length }) => length));
  const widths = Array.from({ length: columns }, (_, column) =>
    Math.max(...rows.map((row) => lengthOf(row[column] ?? ''))),
  );
  return rows.map((row) =>
    row
      .map((text, column) => padded(text, widths[column] ?? 0))
      .join('  ')
      .trimEnd(),
  );
}

// In characters, not in units of UTF-16.
const lengthOf = (text: string) => [...text].length;

function padded(text: string, width: number): string {
  const blanks = ' '.repeat(width - lengthOf(text));
  return /^\d+$/.test(text) ? blanks + text : text + blanks;
}
