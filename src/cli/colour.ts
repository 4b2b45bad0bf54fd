import { styleText } from 'node:util';

export type Colour = 'red' | 'yellow' | 'blue' | 'magenta' | 'green' | 'dim';

/** Colour only on a terminal, and never with NO_COLOR set (no-color.org). */
export function coloured(text: string, colour: Colour, stream: NodeJS.WriteStream): string {
  const plain = !stream.isTTY || (process.env.NO_COLOR ?? '') !== '';
  return plain ? text : styleText(colour, text);
}
