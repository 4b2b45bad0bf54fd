import { attribute, scanXml } from './scan-xml.ts';
import { unescaped } from './xlsx-strings.ts';

// Before the first words of a conversation stands, in the old form of a comment, advice on how to see its new form.
const OF_A_CONVERSATION = /^\[Threaded comment\][\s\S]*?Comment:\s*/;

/** The comments on the cells of a sheet, by the cell (`B4`). */
export function readComments(bytes: Uint8Array, file: string, name: string): ReadonlyMap<string, string> {
  const comments = new Map<string, string>();
  let cell = '';
  let text = '';
  let inText = false;
  scanXml(bytes, file, name, {
    open(element, attributes, empty) {
      if (element === 'comment') {
        cell = attribute(attributes, 'ref') ?? '';
        text = '';
      } else if (element === 't') inText = !empty;
    },
    close(element) {
      if (element === 't') inText = false;
      else if (element === 'comment') {
        const said = unescaped(text).replace(OF_A_CONVERSATION, '').trim();
        if (said !== '') comments.set(cell, said);
      }
    },
    text(piece) {
      if (inText) text += piece;
    },
  });
  return comments;
}
