/// <reference lib="dom" />
import type { Question } from './question.ts';

/**
 * Gives everything in the index, and every number in the table of the years, a way into the list: buttons that would do
 * nothing without a script. This function goes into the page as it is written, so it leans on nothing outside itself.
 */
export function addWays(question: Question): void {
  function button(words: string | NodeList, does: () => void): HTMLButtonElement {
    const made = document.createElement('button');
    made.type = 'button';
    made.append(...(typeof words === 'string' ? [words] : words));
    made.onclick = does;
    return made;
  }

  for (const entry of document.querySelectorAll('.entries > li')) {
    if (entry.querySelector('.at') === null) continue;
    const name = entry.querySelector('h3')?.textContent ?? '';
    const show = button('Show in the list', () => question.choose('about', entry.id, name));
    show.setAttribute('aria-label', `Show in the list: ${name}`);
    entry.append(show);
  }
  for (const cell of document.querySelectorAll('.years td[data-y]'))
    cell.append(button(cell.childNodes, () => question.chooseYears(cell)));
  document.querySelector('.bars')?.addEventListener('click', (event) => {
    const bar = (event.target as Element).closest('g[data-y]');
    if (bar !== null) question.chooseYears(bar);
  });
}
