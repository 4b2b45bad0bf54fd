/// <reference lib="dom" />
import type { addWays } from './add-ways.ts';
import type { makeFinder } from './find.ts';
import type { mistakes } from './mistakes.ts';
import type { Question, questionOf } from './question.ts';
import type { readUnits } from './read-units.ts';
import type { showFound } from './show-found.ts';
import type { treeOf } from './tree.ts';
import type { wordReader } from './words.ts';

/** The other functions of the page's script. */
interface Parts {
  addWays: typeof addWays;
  makeFinder: typeof makeFinder;
  mistakes: typeof mistakes;
  questionOf: typeof questionOf;
  readUnits: typeof readUnits;
  showFound: typeof showFound;
  treeOf: typeof treeOf;
  wordReader: typeof wordReader;
}

/**
 * What the page does beyond what HTML does by itself. This function goes into the page as it is written, so it leans
 * on nothing outside itself but what it is given.
 */
export function behaviour(parts: Parts): void {
  const AT_ONCE = 25;
  // As long as a page may be busy without being felt to be slow, in milliseconds.
  const BREATH = 40;

  const list = document.getElementById('part:list');
  const form = document.querySelector<HTMLFormElement>('#part\\:find');
  const found = document.getElementById('part:found');
  const answers = found?.querySelector('ol');
  const more = found?.querySelector('button');
  const said = document.getElementById('find:said');
  if (!list || !form || !found || !answers || !more || !said) return;

  const units = parts.readUnits(list);
  const tree = parts.treeOf(list, units);
  const reader = parts.wordReader();
  const { wordsOf } = reader;
  const finder = parts.makeFinder({ words: reader, mistakes: parts.mistakes });
  const question: Question = parts.questionOf(form, ask);
  let showNext = () => {};
  let indexed = 0;

  /** Reads on in the list, a breath at a time, until every unit can be found. */
  function index(): void {
    const end = performance.now() + BREATH;
    for (; indexed < units.length && performance.now() < end; indexed++) {
      const [title, rest, code] = units[indexed]?.texts() ?? ['', '', ''];
      finder.add(title, rest, code);
    }
    if (indexed < units.length) return void setTimeout(index);
    form?.removeAttribute('aria-busy');
    if (isAsked()) answer();
    tree.fillAtLeisure();
  }

  const isAsked = () => question.narrowing() !== undefined || wordsOf(question.words()).length > 0;

  function answer(): void {
    if (!list || !found || !said || !answers || !more) return;
    const asked = isAsked();
    list.hidden = asked;
    found.hidden = !asked;
    answers.replaceChildren();
    if (!asked) said.textContent = '';
    if (!asked) return;
    const narrow = question.narrowing() ?? (() => true);
    const isAllowed = (at: number) => at < indexed && units[at] !== undefined && narrow(units[at]);
    const hasWords = wordsOf(question.words()).length > 0;
    const { order, words, isNear } = hasWords
      ? finder.find(question.words(), isAllowed)
      : { order: [...units.keys()].filter(isAllowed), words: new Set<string>(), isNear: false };
    said.textContent = sayFound(order.length, isNear);
    let shown = 0;
    const isMarked = (word: string) => words.size > 0 && wordsOf(word).some((one) => words.has(one));
    showNext = () => {
      const next = order.slice(shown, shown + AT_ONCE).flatMap((at) => units[at] ?? []);
      answers.append(...next.map((unit) => parts.showFound(unit, isMarked)));
      shown += next.length;
      more.hidden = shown >= order.length;
    };
    showNext();
  }

  function sayFound(number: number, isNear: boolean): string {
    const count = `${number} ${number === 1 ? 'entry' : 'entries'}`;
    if (indexed < units.length) return `${count} so far; still reading the list.`;
    if (number === 0) return 'Nothing found. Fewer words, or a wider span of years, may help.';
    return isNear
      ? `Nothing has these words as they are written. Near to them: ${count}.`
      : `${count} found.`;
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
    answers.querySelector('a')?.focus();
  });
  more.addEventListener('click', () => {
    const last = answers.lastElementChild;
    showNext();
    last?.nextElementSibling?.querySelector('a')?.focus();
  });
  addEventListener('hashchange', follow);

  document.documentElement.classList.add('live');
  form.hidden = false;
  document.querySelector('nav > ul > [hidden]')?.removeAttribute('hidden');
  form.setAttribute('aria-busy', 'true');
  follow();
  setTimeout(index);
}
