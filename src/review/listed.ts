/** The words of a table, written as people write a list: 'mould, mildew, damp'. */
export const listed = (...lines: readonly string[]): string[] => lines.flatMap((line) => line.split(', '));
