/** A piece of a paper that goes with a collection. Texts are plain; each form of writing makes them safe for itself. */
export type Block =
  | { kind: 'heading'; text: string }
  | { kind: 'text'; text: string }
  | { kind: 'list'; items: readonly string[] }
  /** Each with a box to tick before it. */
  | { kind: 'ticks'; items: readonly string[] }
  /** Labels, each with a line to write on behind it. */
  | { kind: 'lines'; labels: readonly string[] }
  | { kind: 'table'; headings: readonly string[]; rows: readonly (readonly string[])[]; ticked?: true };

/** A paper to be read, printed and signed. */
export interface Paper {
  title: string;
  blocks: readonly Block[];
}

export const heading = (text: string): Block => ({ kind: 'heading', text });
export const text = (words: string): Block => ({ kind: 'text', text: words });
export const list = (...items: readonly string[]): Block => ({ kind: 'list', items });
export const ticks = (...items: readonly string[]): Block => ({ kind: 'ticks', items });
export const lines = (...labels: readonly string[]): Block => ({ kind: 'lines', labels });

/** A title within a sentence: the Quill Family Papers. */
export const withArticle = (title: string): string => (/^the\s/i.test(title) ? title : `the ${title}`);

/** On every paper that could be taken for a contract. */
export const NO_ADVICE = text(
  'This paper is no legal advice and no contract. It was made to help two parties talk. The form of the archive itself, and where there is doubt a lawyer, decide what is agreed; the law differs from country to country.',
);
