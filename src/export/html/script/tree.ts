/// <reference lib="dom" />
import type { ShownUnit } from './read-units.ts';

/** The tree of units: what is in it, and the ways to it. */
export interface Tree {
  /** Whether an address names a unit. */
  has(hash: string): boolean;
  /** Opens the way to the unit that an address names, and goes there. */
  goTo(hash: string): void;
  /** Makes what still waits as text, when nobody needs the time, so that the browser's own search finds it. */
  fillAtLeisure(): void;
}

/**
 * Opens and fills the tree. In a large catalogue the contents of folders wait in `noscript` until they are wanted: a
 * folder that is opened, an address, paper. This function goes into the page as it is written, so it leans on nothing
 * outside itself.
 */
export function treeOf(list: Element, units: readonly ShownUnit[]): Tree {
  const byId = new Map(units.map((unit) => [unit.id, unit]));

  function fill(details: Element | null | undefined): void {
    const waiting = details?.querySelector(':scope > noscript');
    if (!waiting) return;
    // The HTML comes from this very page, where every text of the catalogue was escaped.
    const template = document.createElement('template');
    template.innerHTML = waiting.textContent ?? '';
    waiting.replaceWith(template.content);
  }

  const detailsOf = (group: Element) => group.querySelector(':scope > details');

  const named = (hash: string): ShownUnit | undefined => {
    const id = hash.slice(1);
    try {
      return byId.get(decodeURIComponent(id));
    } catch {
      // Not encoded as it should be: it is taken as it is.
      return byId.get(id);
    }
  };

  // The event does not rise, but it can be caught on its way down.
  list.addEventListener('toggle', (event) => fill(event.target as Element), true);

  // A browser that does not print what is closed is shown everything open.
  const opened: Element[] = [];
  addEventListener('beforeprint', () => {
    for (const details of document.querySelectorAll('.units details, .entries details')) {
      fill(details);
      if (details.hasAttribute('open')) continue;
      details.setAttribute('open', '');
      opened.push(details);
    }
  });
  addEventListener('afterprint', () => {
    for (const details of opened.splice(0)) details.removeAttribute('open');
  });

  return {
    has: (hash) => named(hash) !== undefined,
    goTo(hash) {
      const unit = named(hash);
      if (unit === undefined) return;
      for (
        let group: Element | null | undefined = unit.above;
        group;
        group = group.parentElement?.closest('li.u')
      ) {
        const details = detailsOf(group);
        fill(details);
        details?.setAttribute('open', '');
      }
      const element = document.getElementById(unit.id);
      if (element === null) return;
      const own = detailsOf(element);
      fill(own);
      own?.setAttribute('open', '');
      element.setAttribute('tabindex', '-1');
      element.focus({ preventScroll: true });
      element.scrollIntoView();
    },
    fillAtLeisure() {
      const waiting = [...list.querySelectorAll('noscript')];
      const next = (isTimeLeft: () => boolean) => {
        while (waiting.length > 0 && isTimeLeft()) fill(waiting.shift()?.parentElement);
        if (waiting.length > 0) later();
      };
      const later = () => {
        if ('requestIdleCallback' in window)
          requestIdleCallback((idle) => next(() => idle.timeRemaining() > 3));
        else
          setTimeout(() => {
            const end = Date.now() + 8;
            next(() => Date.now() < end);
          }, 50);
      };
      later();
    },
  };
}
