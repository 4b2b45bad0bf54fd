/** Where a row and its cells stand in a text, in UTF-16 units. */
export interface RowSpan {
  /** As a spreadsheet counts it, empty rows included. */
  row: number;
  /** Where each cell begins, its quotation marks and blanks included; it ends before the separator or line break. */
  starts: readonly number[];
  /** Where the row ends, before its line break. */
  end: number;
}

/** Finds the rows and cells that `readRows` reads from a text in which every quotation mark is closed. */
export function* rowSpans(text: string, separator: string | undefined): Generator<RowSpan> {
  const sep = separator ?? '';
  // A quoted cell, with blanks before it and whatever follows; or any other.
  const cell = new RegExp(` *"[^"]*(?:""[^"]*)*"(?!")[^${sep}\\r\\n]*|[^${sep}\\r\\n]*`, 'y');
  let starts: number[] = [];
  let row = 1;
  for (let at = 0; at < text.length; ) {
    starts.push(at);
    cell.lastIndex = at;
    cell.test(text);
    let end = cell.lastIndex;
    if (text[end] === separator) {
      at = end + 1;
      if (at < text.length) continue;
      // A separator at the very end of the text still opens a cell, an empty one.
      starts.push(at);
      end = at;
    }
    yield { row, starts, end };
    starts = [];
    row++;
    at = text.startsWith('\r\n', end) ? end + 2 : end + 1;
  }
}
