import { fold } from '../catalogue/fold.ts';
import { KEEP_WORDS } from './keep-words.ts';

const plain = (text: string) =>
  ` ${fold(text)
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()} `;

/** Whether a statement on access says that the thing is not to be given away. */
export const saysItStays = (access: string | undefined): boolean =>
  access !== undefined && KEEP_WORDS.some((words) => plain(access).includes(` ${words} `));
