import { type ContentModel, choice, notAllowed, nothing, one, repeated, sequence } from './content-model.ts';

/**
 * A pattern of W3C XML Schema (part 2, appendix F) as a model over single characters, as far as those for dates and
 * codes use the language: characters, classes of them, groups, alternatives, `?`, `{n}`, `{n,m}`, `*`, `+`.
 * @throws Error for anything else
 */
export function patternModel(pattern: string): ContentModel {
  let at = 0;
  const peek = () => pattern[at] ?? '';
  const fail = () => new Error(`The pattern ${pattern} holds something that is not read, at ${at}`);
  const expectSign = (sign: string) => {
    if (peek() !== sign) throw fail();
    at += 1;
  };

  const alternatives = (): ContentModel => {
    const list = [branch()];
    while (peek() === '|') {
      at += 1;
      list.push(branch());
    }
    return choice(list);
  };
  const branch = (): ContentModel => {
    const items: ContentModel[] = [];
    while (at < pattern.length && !'|)'.includes(peek())) items.push(quantified(atom()));
    return sequence(items);
  };
  const atom = (): ContentModel => {
    const sign = peek();
    if (sign === '(') {
      at += 1;
      const inner = alternatives();
      expectSign(')');
      return inner;
    }
    if (sign === '[') return characters();
    return one(character());
  };
  const character = (): string => {
    if (peek() === '\\') at += 1;
    else if ('.^$?*+{}[]()|'.includes(peek())) throw fail();
    const found = peek();
    at += 1;
    if (pattern[at - 2] === '\\' && /[A-Za-z0-9]/.test(found)) throw fail();
    return found;
  };
  const characters = (): ContentModel => {
    expectSign('[');
    const found: string[] = [];
    while (peek() !== ']') {
      const from = character();
      if (peek() === '-' && pattern[at + 1] !== ']') {
        at += 1;
        const to = character();
        for (let code = from.charCodeAt(0); code <= to.charCodeAt(0); code++)
          found.push(String.fromCharCode(code));
      } else found.push(from);
    }
    expectSign(']');
    return choice(found.map(one));
  };
  const quantified = (item: ContentModel): ContentModel => {
    const [all = '', short, least, most] = /^(?:([?*+])|\{(\d+)(?:,(\d+))?\})/.exec(pattern.slice(at)) ?? [];
    at += all.length;
    if (short === '?') return choice([item, nothing]);
    if (short !== undefined) return repeated(item, short === '+' ? 1 : 0, Number.POSITIVE_INFINITY);
    return least === undefined ? item : repeated(item, Number(least), Number(most ?? least));
  };

  const model = alternatives();
  if (at < pattern.length) throw fail();
  return model;
}

/** A text that the narrow pattern takes and the wide one does not; undefined where there is none, which proves it. */
export const excessText = (narrow: string, wide: string): string | undefined =>
  notAllowed(patternModel(narrow), patternModel(wide))?.join('');
