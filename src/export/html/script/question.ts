/// <reference lib="dom" />
import type { ShownUnit } from './read-units.ts';

/** What somebody asks of the list: words, and how it is to be narrowed. */
export interface Question {
  words(): string;
  /** A test for what the fields other than the words ask for; undefined where they ask for nothing. */
  narrowing(): ((unit: ShownUnit) => boolean) | undefined;
  /** Chooses something elsewhere on the page: a group, or whatever things point to. */
  choose(kind: 'group' | 'about', id: string, name: string): void;
  /** Chooses a stretch of years within a group, from the picture of the years or its table. */
  chooseYears(from: Element): void;
}

/**
 * The question that the form asks. This function goes into the page as it is written, so it leans on nothing outside
 * itself.
 * @param ask called whenever the question has changed
 */
export function questionOf(form: HTMLFormElement, ask: () => void): Question {
  const chosen: { group?: [string, string]; about?: [string, string] } = {};
  const field = (id: string) => document.getElementById(id) as HTMLInputElement | HTMLSelectElement | null;
  const said = (id: string) => field(id)?.value.trim() ?? '';
  const yearOf = (id: string, open: number) => (/^-?\d+$/.test(said(id)) ? Number(said(id)) : open);

  function forget(): void {
    delete chosen.group;
    delete chosen.about;
    for (const bar of document.querySelectorAll('.bars .on')) bar.classList.remove('on');
  }

  function changed(): void {
    const buttons = (['group', 'about'] as const).flatMap((kind) => {
      const now = chosen[kind];
      if (now === undefined) return [];
      const button = document.createElement('button');
      button.type = 'button';
      button.textContent = `${kind === 'group' ? 'In' : 'With'} ${now[1]}`;
      button.setAttribute('aria-label', `Take away: ${button.textContent}`);
      button.onclick = () => {
        delete chosen[kind];
        changed();
        field('find:words')?.focus();
      };
      return [button];
    });
    document.getElementById('find:chosen')?.replaceChildren(...buttons);
    ask();
  }

  const choose: Question['choose'] = (kind, id, name) => {
    chosen[kind] = [id, name];
    changed();
    form.scrollIntoView();
  };

  form.addEventListener('input', ask);
  form.addEventListener('reset', () => {
    forget();
    // The fields are empty only once the event is over.
    setTimeout(changed);
  });

  return {
    words: () => said('find:words'),
    narrowing() {
      const from = yearOf('find:from', Number.NEGATIVE_INFINITY);
      const to = yearOf('find:to', Number.POSITIVE_INFINITY);
      const hasYears = from !== Number.NEGATIVE_INFINITY || to !== Number.POSITIVE_INFINITY;
      const links = [said('find:box'), said('find:kind'), chosen.about?.[0] ?? '']
        .filter((anchor) => anchor !== '')
        .map((anchor) => `href="#${anchor}"`);
      const wantsCopy = (field('find:copy') as HTMLInputElement | null)?.checked === true;
      if (!hasYears && links.length === 0 && !wantsCopy && chosen.group === undefined) return undefined;
      return (unit) =>
        unit.isThing &&
        (!hasYears || (unit.first <= to && unit.last >= from)) &&
        (chosen.group === undefined || unit.group === chosen.group[0]) &&
        links.every((link) => unit.html.includes(link)) &&
        (!wantsCopy || unit.html.includes('class="copies"'));
    },
    choose,
    chooseYears(from) {
      const [first = '', last = first] = from.getAttribute('data-y')?.split('/') ?? [];
      for (const [id, year] of [
        ['find:from', first],
        ['find:to', last],
      ] as const) {
        const input = field(id);
        if (input) input.value = year;
      }
      for (const bar of document.querySelectorAll('.bars .on')) bar.classList.remove('on');
      if (from.tagName === 'g') from.classList.add('on');
      const group = from.closest('[data-g]')?.getAttribute('data-g') ?? '';
      choose('group', group, document.getElementById(group)?.querySelector('.n')?.textContent ?? '');
    },
  };
}
