/** The letters that mean something in markup. */
export const CODE = {
  ...{ blank: 0x20, tab: 0x09, lineFeed: 0x0a, carriageReturn: 0x0d },
  ...{ less: 0x3c, greater: 0x3e, slash: 0x2f, exclamation: 0x21, question: 0x3f },
  ...{ equals: 0x3d, double: 0x22, single: 0x27, ampersand: 0x26 },
} as const;

/** XML 1.0, 4.6, and the references to characters of 4.1; the last is an ampersand that begins neither. */
const REFERENCE = /&(?:#x([0-9A-Fa-f]+);|#([0-9]+);|([\w.:-]+);)?/g;
const PREDEFINED: Readonly<Record<string, string>> = { lt: '<', gt: '>', amp: '&', quot: '"', apos: "'" };

/** Refuses the text. @param at where, in UTF-16 units from 0 */
export function fail(says: string, at: number): never {
  throw new Error(`${says} (at character ${at + 1}).`);
}

/** The next that is no white space: XML 1.0, 2.3. */
export function afterBlanks(text: string, from: number): number {
  let here = from;
  for (; ; here++) {
    const code = text.charCodeAt(here);
    if (code !== CODE.blank && code !== CODE.lineFeed && code !== CODE.tab && code !== CODE.carriageReturn)
      return here;
  }
}

/** A text between tags as it is meant. */
export function characters(raw: string, at: number): string {
  // XML 1.0, 2.4: it ends a CDATA section, and may stand nowhere else.
  if (raw.includes(']]>')) fail(']]> closes nothing', at);
  return references(raw, at);
}

/** Puts the characters in the place of references to them. */
export function references(raw: string, at: number): string {
  if (!raw.includes('&')) return raw;
  return raw.replace(REFERENCE, (written, hex?: string, decimal?: string, name?: string) => {
    if (name !== undefined) return PREDEFINED[name] ?? fail(`${written} is defined nowhere`, at);
    const code = hex === undefined ? Number(decimal) : Number.parseInt(hex, 16);
    return isCharacter(code) ? String.fromCodePoint(code) : fail(`${written} stands for no character`, at);
  });
}

/** XML 1.0, 2.2, production [2] Char. */
const isCharacter = (code: number): boolean =>
  code < 0x20
    ? code === 0x09 || code === 0x0a || code === 0x0d
    : code <= 0xd7ff || (code >= 0xe000 && code <= 0xfffd) || (code >= 0x10000 && code <= 0x10ffff);

/** Whether a CDATA section begins there. */
export const isCharacterData = (text: string, at: number): boolean => text.startsWith('![CDATA[', at);

/** Where a comment, a processing instruction or a CDATA section ends: XML 1.0, 2.5 to 2.7. */
export function endOfAside(text: string, from: number): number {
  const after = (end: string, start: number): number => {
    const found = text.indexOf(end, start);
    return found < 0 ? fail(`${end} is missing`, from) : found + end.length;
  };
  if (text.startsWith('?', from)) {
    const end = after('?>', from + 1);
    const [, target = ''] = /^([^\s?]+)(?:\s|\?>$)/.exec(text.slice(from + 1, end)) ?? [];
    const isDeclaration = from === 1 && target === 'xml';
    if (!isDeclaration && !/^(?!xml$)[a-z_][a-z0-9_.-]*$/i.test(target))
      fail('An instruction has no name', from);
    return end;
  }
  if (isCharacterData(text, from)) return after(']]>', from);
  if (!text.startsWith('!--', from)) return fail('Neither an element nor a comment begins', from);
  const end = after('--', from + '!--'.length);
  return text.charCodeAt(end) === CODE.greater ? end + 1 : fail('A comment holds two hyphens', from);
}
