import { fold } from '../catalogue/fold.ts';
import { FAMILY_ONLY_WORDS, KEEP_WORDS } from './keep-words.ts';

const plain = (text: string) =>
  ` ${fold(text)
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()} `;

const hasOneOf = (access: string | undefined, table: readonly string[]): boolean =>
  access !== undefined && table.some((words) => plain(access).includes(` ${words} `));

/** Whether a statement on access says that the thing is not to be given away. */
export const saysItStays = (access: string | undefined): boolean =>
  hasOneOf(access, KEEP_WORDS) || hasOneOf(access, FAMILY_ONLY_WORDS);

/** Whether it says so only by naming the family as those who may see it. */
export const saysFamilyOnly = (access: string | undefined): boolean =>
  hasOneOf(access, FAMILY_ONLY_WORDS) && !hasOneOf(access, KEEP_WORDS);
