import { type Component, type Container, type Level, level } from '../../catalogue/component.ts';
import { isFolder, type Place as Lies, numbersIn, placeOf } from '../../catalogue/containers.ts';

/** A unit of description in a container. */
export interface Held {
  unit: Component;
  /** The groups above it, outermost first, without the collection. */
  path: readonly Component[];
  /** The folders in which it lies, as far as they stand in this container. */
  folders: readonly string[];
  /** Which of the folders, or boxes, over which it is spread this is: `1 of 3`. */
  part?: string;
}

/** A folder or box on the shelf with everything in it. */
export interface Place {
  type: string;
  number: string;
  folder: boolean;
  /** The box in which a folder stands. */
  box?: Pick<Container, 'type' | 'number'>;
  held: Held[];
}

// So many labels for one unit are a slip in its numbers, and a waste of sheets: it gets one for all of them.
const MOST = 500;

// ISAD(G) 3.1.4: files and items are what is described within them.
const GROUPS: ReadonlySet<Level> = new Set(level.options.filter((one) => one !== 'file' && one !== 'item'));

/** The numbers of a folder container: of a bundle in several folders, `3-5`, each of them. */
function numbersOf({ number }: Container): string[] {
  const numbers = numbersIn(number);
  return numbers.length > MOST ? [number] : numbers;
}

/** Every folder and box that the units of a collection name, each once, with all that is in it in its order. */
export function containersOf(collection: Component): Place[] {
  const places = new Map<string, Place>();

  const put = (place: Omit<Place, 'held'>, held: Held): void => {
    const { type, number, box } = place;
    const key = JSON.stringify([type, number, box?.type, box?.number]);
    const there = places.get(key);
    if (there === undefined) places.set(key, { ...place, held: [held] });
    else there.held.push(held);
  };

  const visit = (unit: Component, path: readonly Component[], above: Lies): void => {
    const { containers } = unit;
    const place = placeOf(containers, above);
    const folders = containers.length === 0 ? [] : place.folders;
    const boxes = containers.filter(({ type }) => !isFolder(type));
    const parts = folders.flatMap(({ folder }) => numbersOf(folder)).length;
    const used = new Set<Container>();
    let part = 0;
    for (const { folder, boxes: around } of folders) {
      // In which of several boxes it stands, the finding aid does not say.
      const box = around.length > 1 ? undefined : around[0];
      const numbers = numbersOf(folder);
      for (const number of numbers) {
        part += 1;
        const in_ = { unit, path, folders: [number], ...(parts > 1 && { part: `${part} of ${parts}` }) };
        put({ type: folder.type, number, folder: true, ...(box !== undefined && { box: bare(box) }) }, in_);
      }
      if (box === undefined) continue;
      used.add(box);
      put({ ...bare(box), folder: false }, { unit, path, folders: numbers });
    }
    const own = boxes.filter((box) => !used.has(box));
    own.forEach((box, index) => {
      const share = { ...(own.length > 1 && { part: `${index + 1} of ${own.length}` }) };
      put({ ...bare(box), folder: false }, { unit, path, folders: [], ...share });
    });
    const below = GROUPS.has(unit.level) ? [...path, unit] : path;
    for (const child of unit.children) visit(child, below, place);
  };

  for (const child of collection.children) visit(child, [], placeOf(collection.containers));
  return [...places.values()];
}

const bare = ({ type, number }: Container): Pick<Container, 'type' | 'number'> => ({ type, number });
