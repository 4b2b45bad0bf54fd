/// <reference lib="dom" />
import type { addWays } from './add-ways.ts';
import type { fillIndex } from './fill-index.ts';
import type { Answer, makeFinder } from './find.ts';
import type { mistakes } from './mistakes.ts';
import type { Question, questionOf } from './question.ts';
import type { readUnits } from './read-units.ts';
import type { showAnswers } from './show-answers.ts';
import type { showFound } from './show-found.ts';
import type { treeOf } from './tree.ts';
import type { wordReader } from './words.ts';

/** The other functions of the page's script. */
interface Parts {
  addWays: typeof addWays;
  fillIndex: typeof fillIndex;
  makeFinder: typeof makeFinder;
  mistakes: typeof mistakes;
  questionOf: typeof questionOf;
  readUnits: typeof readUnits;
  showAnswers: typeof showAnswers;
  showFound: typeof showFound;
  treeOf: typeof treeOf;
  wordReader: typeof wordReader;
}

/**
 * What the page does beyond what HTML does by itself. This function goes into the page as it is written, so it leans
 * on nothing outside itself but what it is given.
 */
export function behaviour(parts: Parts): void {
  const list = document.getElementById('part:list');
  const form = document.querySelector<HTMLFormElement>('#part\\:find');
  const found = document.getElementById('part:found');
  const answerList = found?.querySelector('ol');
  const more = found?.querySelector('button');
  const said = document.getElementById('find:said');
  if (!list || !form || !found || !answerList || !more || !said) return;

  const units = parts.readUnits(list);
  const tree = parts.treeOf(list, units);
  const words = parts.wordReader();
  const { wordsOf } = words;
  const { showFound } = parts;
  const answers = parts.showAnswers({ list: answerList, more, said, units, wordsOf, showFound });
  const finder = parts.makeFinder({ words, mistakes: parts.mistakes });
  const index = parts.fillIndex(finder, units, () => {
    form.removeAttribute('aria-busy');
    if (isAsked()) answer();
    tree.fillAtLeisure();
  });
  const question: Question = parts.questionOf(form, ask);

  const hasWords = () => wordsOf(question.words()).length > 0;
  const isAsked = () => question.narrowing() !== undefined || hasWords();

  function answer(): void {
    if (!list || !found) return;
    const asked = isAsked();
    list.hidden = asked;
    found.hidden = !asked;
    if (asked) answers.show(find(), index.done >= units.length);
    else answers.clear();
  }

  function find(): Answer {
    const narrow = question.narrowing() ?? (() => true);
    const isAllowed = (at: number) => at < index.done && units[at] !== undefined && narrow(units[at]);
    return hasWords()
      ? finder.find(question.words(), isAllowed)
      : { order: [...units.keys()].filter(isAllowed), words: new Set(), isNear: false };
  }

  /** Takes a new question; the place in the tree that the address still names is left. */
  function ask(): void {
    if (tree.has(location.hash)) history.replaceState(null, '', '#part:contents');
    answer();
  }

  function follow(): void {
    // An address that names no unit leaves the list as it was asked for: so the way back leads to the answers.
    if (!tree.has(location.hash)) return void answer();
    if (list) list.hidden = false;
    if (found) found.hidden = true;
    tree.goTo(location.hash);
  }

  parts.addWays(question);
  form.addEventListener('submit', (event) => event.preventDefault());
  document.getElementById('find:words')?.addEventListener('keydown', (event) => {
    if (event.key !== 'Enter') return;
    event.preventDefault();
    answers.goToFirst();
  });
  addEventListener('hashchange', follow);

  document.documentElement.classList.add('live');
  form.hidden = false;
  document.querySelector('nav > ul > [hidden]')?.removeAttribute('hidden');
  form.setAttribute('aria-busy', 'true');
  follow();
  index.begin();
}
