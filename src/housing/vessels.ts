import type { Usual } from './forms.ts';
import { mm } from './measures.ts';

const M = 'as such things usually are, from memory';
const row = (long: number, short: number, each: number): Usual => ({
  form: 'object',
  shelf: 'objects',
  size: mm(long, short),
  each,
  source: M,
});

/** What small things lie in together, as large as such things usually are; thickness in millimetres. */
const CONTAINERS: Readonly<Record<string, Usual>> = {
  // A biscuit tin.
  tin: row(240, 190, 90),
  // A jam jar.
  jar: row(130, 80, 80),
  bottle: row(250, 120, 120),
  // A shoe box.
  box: row(320, 230, 150),
  bag: row(250, 180, 60),
  basket: row(250, 160, 160),
  bowl: row(250, 160, 160),
};

const CONTAINER = new RegExp(`^(?:(?:an?|the|one) )?(${Object.keys(CONTAINERS).join('|')}) of (.+)$`, 'i');

/** A container and what lies in it. */
interface Contained {
  container: Usual;
  /** What it is called: "tin". */
  word: string;
  content: string;
}

/** What is said to be a tin, jar or box of something: "Tin of buttons". Whether that is no paper is not asked here. */
export function containerIn(text: string): Contained | undefined {
  const [, word = '', content = ''] = CONTAINER.exec(text.trim()) ?? [];
  const container = CONTAINERS[word.toLowerCase()];
  return container && { container, word: word.toLowerCase(), content };
}
