import type { makeFinder } from './find.ts';
import type { ShownUnit } from './read-units.ts';

/** The filling of the index. */
interface Filling {
  /** How many units can be found so far, from the first on. */
  readonly done: number;
  begin(): void;
}

/**
 * Puts the units of the list into the index, a breath at a time, so that the page answers meanwhile. This function goes
 * into the page as it is written, so it leans on nothing outside itself but what it is given.
 * @param whenDone called once every unit can be found
 */
export function fillIndex(
  finder: Pick<ReturnType<typeof makeFinder>, 'add'>,
  units: readonly ShownUnit[],
  whenDone: () => void,
): Filling {
  // As long as a page may be busy without being felt to be slow, in milliseconds.
  const BREATH = 40;
  let done = 0;

  function goOn(): void {
    const end = performance.now() + BREATH;
    for (; done < units.length && performance.now() < end; done++) {
      const [title, rest, code] = units[done]?.texts() ?? ['', '', ''];
      finder.add(title, rest, code);
    }
    if (done < units.length) setTimeout(goOn);
    else whenDone();
  }

  return {
    get done() {
      return done;
    },
    begin: () => void setTimeout(goOn),
  };
}
