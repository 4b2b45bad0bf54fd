/// <reference lib="dom" />
import type { Answer } from './find.ts';
import type { ShownUnit } from './read-units.ts';
import type { showFound } from './show-found.ts';
import type { WordReader } from './words.ts';

/** Where the answers stand in the page, and what they are made with. */
interface Given {
  list: Element;
  /** The button for more of them. */
  more: HTMLButtonElement;
  /** Where it is said how many there are. */
  said: Element;
  units: readonly ShownUnit[];
  wordsOf: WordReader['wordsOf'];
  showFound: typeof showFound;
}

/** The answers to a question. */
interface Answers {
  clear(): void;
  /** @param isWhole whether all of the list could be found */
  show(answer: Answer, isWhole: boolean): void;
  goToFirst(): void;
}

/**
 * Shows what was found, some at a time. This function goes into the page as it is written, so it leans on nothing
 * outside itself but what it is given.
 */
export function showAnswers({ list, more, said, units, wordsOf, showFound }: Given): Answers {
  const AT_ONCE = 25;
  let showNext = () => {};

  function sayFound(number: number, isNear: boolean, isWhole: boolean): string {
    const count = `${number} ${number === 1 ? 'entry' : 'entries'}`;
    if (!isWhole) return `${count} so far; still reading the list.`;
    if (number === 0) return 'Nothing found. Fewer words, or a wider span of years, may help.';
    return isNear
      ? `Nothing has these words as they are written. Near to them: ${count}.`
      : `${count} found.`;
  }

  more.addEventListener('click', () => {
    const last = list.lastElementChild;
    showNext();
    last?.nextElementSibling?.querySelector('a')?.focus();
  });

  return {
    clear() {
      list.replaceChildren();
      said.textContent = '';
    },
    show({ order, words, isNear }, isWhole) {
      list.replaceChildren();
      said.textContent = sayFound(order.length, isNear, isWhole);
      let shown = 0;
      const isMarked = (word: string) => words.size > 0 && wordsOf(word).some((one) => words.has(one));
      showNext = () => {
        const next = order.slice(shown, shown + AT_ONCE).flatMap((at) => units[at] ?? []);
        list.append(...next.map((unit) => showFound(unit, isMarked)));
        shown += next.length;
        more.hidden = shown >= order.length;
      };
      showNext();
    },
    goToFirst() {
      list.querySelector('a')?.focus();
    },
  };
}
