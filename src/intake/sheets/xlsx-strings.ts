import { scanXml } from './scan-xml.ts';

/** Signs that XML cannot hold are written by their number (ECMA-376 Part 1, 22.9.2.19): `_x000D_` is a line break. */
export function unescaped(text: string): string {
  if (!text.includes('_x')) return text;
  return text
    .replace(/_x([0-9a-f]{4})_/gi, (_, code: string) => String.fromCharCode(Number.parseInt(code, 16)))
    .replace(/\r\n?/g, '\n');
}

/** The texts that cells share, in the order in which cells refer to them; fonts and readings aloud are left out. */
export function readStrings(bytes: Uint8Array, file: string, name: string): readonly string[] {
  const strings: string[] = [];
  let text = '';
  let inText = false;
  let aloud = false;
  scanXml(bytes, file, name, {
    open(element, _, empty) {
      if (element === 't') inText = !empty && !aloud;
      else if (element === 'si') {
        if (empty) strings.push('');
        text = '';
      } else if (element === 'rPh') aloud = !empty;
    },
    close(element) {
      if (element === 't') inText = false;
      else if (element === 'si') strings.push(unescaped(text));
      else if (element === 'rPh') aloud = false;
    },
    text(piece) {
      if (inText) text = text === '' ? piece : text + piece;
    },
  });
  return strings;
}
