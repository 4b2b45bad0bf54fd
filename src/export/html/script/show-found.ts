/// <reference lib="dom" />
import type { ShownUnit } from './read-units.ts';

/**
 * What a unit looks like among the answers: the way to it, its own lines, and the words that answered marked. This
 * function goes into the page as it is written, so it leans on nothing outside itself.
 */
export function showFound(
  { id, isThing, html, above }: ShownUnit,
  isMarked: (word: string) => boolean,
): HTMLLIElement {
  const shown = document.createElement('li');
  const ways: string[] = [];
  for (let group: Element | null | undefined = above; group; group = group.parentElement?.closest('li.u'))
    ways.unshift(group.querySelector('.n')?.textContent ?? '');
  if (ways.length > 0) {
    const path = document.createElement('p');
    path.className = 'path';
    for (const [at, way] of ways.entries()) {
      const part = document.createElement('bdi');
      part.textContent = way;
      path.append(at === 0 ? '' : ' / ', part);
    }
    shown.append(path);
  }

  // The HTML comes from this very page, where every text of the catalogue was escaped.
  const template = document.createElement('template');
  template.innerHTML = html;
  const own = (isThing && template.content.firstElementChild) || template.content;
  const lines = document.createElement('div');
  lines.className = 'u';
  lines.append(...own.childNodes);
  // A heading among the answers would break into the order of the headings of the page.
  const heading = lines.querySelector('h3, h4, h5, h6');
  if (heading !== null) {
    const line = document.createElement('p');
    line.className = 't';
    line.append(...heading.childNodes);
    heading.replaceWith(line);
  }
  const title = lines.querySelector('.n');
  if (title !== null) {
    const link = document.createElement('a');
    link.href = `#${id}`;
    link.append(...title.childNodes);
    title.append(link);
  }
  shown.append(lines);

  const walker = document.createTreeWalker(lines, NodeFilter.SHOW_TEXT);
  const texts: Text[] = [];
  while (walker.nextNode()) texts.push(walker.currentNode as Text);
  for (const text of texts) {
    const parts = text.data.split(/([\p{L}\p{M}\p{N}]+)/u);
    if (!parts.some((part, at) => at % 2 === 1 && isMarked(part))) continue;
    const marked = parts.map((part, at) => {
      if (at % 2 === 0 || !isMarked(part)) return part;
      const mark = document.createElement('mark');
      mark.textContent = part;
      return mark;
    });
    text.replaceWith(...marked);
  }
  return shown;
}
