import { once } from '../catalogue/once.ts';
import { isName } from './safe.ts';

/** What a name looks like at each place where it is written, and whether it can be one. */
export interface Forms {
  isName: boolean;
  name: string;
  start: string;
  end: string;
  attribute: string;
  /** On a line of its own, by how deep in the tree. */
  onLine: { start: string; closed: string; end: string }[];
}

/** Names come from the writers, not from users: there are few, and each is written many times. */
export const formsOf = once(
  (name: string): Forms => ({
    isName: isName(name),
    name,
    start: `<${name}`,
    end: `</${name}>`,
    attribute: ` ${name}="`,
    onLine: [],
  }),
);

/** The tags on a line of their own, so deep in the tree. */
export function onLine({ name, onLine: known }: Forms, depth: number): Forms['onLine'][number] {
  const there = known[depth];
  if (there !== undefined) return there;
  const lineBreak = `\n${'  '.repeat(depth)}`;
  const forms = {
    start: `${lineBreak}<${name}`,
    closed: `${lineBreak}<${name}>`,
    end: `${lineBreak}</${name}>`,
  };
  known[depth] = forms;
  return forms;
}
