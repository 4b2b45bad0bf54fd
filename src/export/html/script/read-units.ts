/// <reference lib="dom" />

/** A unit as the page tells of it. */
export interface ShownUnit {
  readonly id: string;
  /** Whether it is a thing, and not a group. */
  readonly isThing: boolean;
  /** What the page says of it, as HTML: all of a thing, the first lines and notes of a group. */
  readonly html: string;
  readonly above: Element | null;
  /** The address of the group below the collection in which it stands. */
  readonly group: string;
  /** Years; not a number where none is known, infinite where a side is open. */
  readonly first: number;
  readonly last: number;
  /** What it says, without its tags. */
  texts(): [title: string, all: string, code: string];
}

/**
 * Reads every unit from the tree on the page, so that nothing is in the page twice. What lies in the folders of a large
 * catalogue waits in `noscript` as text, and is read as that: elements for all of it would take seconds to make. This
 * function goes into the page as it is written, so it leans on nothing outside itself.
 */
export function readUnits(list: Element): ShownUnit[] {
  const units: ShownUnit[] = [];
  const signs: Readonly<Record<string, string>> = {
    '&amp;': '&',
    '&lt;': '<',
    '&gt;': '>',
    '&quot;': '"',
    '&#39;': "'",
  };
  const textOf = (html: string): string =>
    html
      .replace(/<(?:"[^"]*"|[^>"])*>/g, ' ')
      .replace(/&(?:amp|lt|gt|quot|#39|nbsp);/g, (sign) => signs[sign] ?? ' ');

  function note(
    id: string,
    isThing: boolean,
    years: string,
    html: string,
    above: Element | null,
    group: string,
  ) {
    const [from = '', to = from] = years.split('/');
    const year = (text: string, open: number) =>
      years === '' ? Number.NaN : text === '' ? open : Number(text);
    const [first, last] = [year(from, Number.NEGATIVE_INFINITY), year(to, Number.POSITIVE_INFINITY)];
    const texts = (): [string, string, string] => [
      textOf(/class="n">(.*?)<\/bdi>/s.exec(html)?.[1] ?? ''),
      // The title of the only thing in a folder stands at that thing too, which is what is looked for.
      textOf(isThing ? html : html.replace(/<span class="o">.*?<\/span>/s, '')),
      textOf(/class="c"[^>]*>(.*?)<\/(?:a|span)>/s.exec(html)?.[1] ?? '').trim(),
    ];
    units.push({ id, isThing, html, above, group, first, last, texts });
  }

  /** Things as HTML, one after the other. Only units begin with an id. */
  function things(html: string, above: Element | null, group: string) {
    for (const piece of html.split('<li id="').slice(1)) {
      const id = piece.slice(0, piece.indexOf('"'));
      const years = /^[^>]* data-y="([^"]*)"/.exec(piece)?.[1] ?? '';
      note(id, true, years, `<li id="${piece}`, above, group === '' ? id : group);
    }
  }

  function below(holder: Element, above: Element | null, group: string) {
    for (const child of holder.children) {
      if (child.tagName === 'NOSCRIPT') things(child.textContent ?? '', above, group);
      else if (child.tagName === 'OL') below(child, above, group);
      else if (child.matches('li.g')) one(child, above, group === '' ? child.id : group);
      else if (child.matches('li.u')) things(child.outerHTML, above, group);
    }
  }

  function one(element: Element, above: Element | null, group: string) {
    const details = element.querySelector('details');
    if (details === null) return;
    const own = [...details.children].filter((part) => part.matches('summary, .b'));
    const html = own.map((part) => part.innerHTML).join(' ');
    note(element.id, false, element.getAttribute('data-y') ?? '', html, above, group);
    below(details, element, group);
  }

  below(list, null, '');
  return units;
}
