const LONGEST = 60;

/** A text of somebody else's for a message: on one line, not too long, and between quotation marks. */
export function quoted(text: string): string {
  const line = text.replace(/\s+/g, ' ').trim();
  return `“${line.length > LONGEST ? `${line.slice(0, LONGEST - 3).trimEnd()}…` : line}”`;
}
