/** Names that Windows keeps for devices, whatever comes behind a dot: "Naming Files, Paths, and Namespaces". */
const DEVICE = /^(?:con|prn|aux|nul|com\d|lpt\d)(?=\.|$)/i;

/** Far below the 255 bytes that common file systems allow, so that an ending and a number still fit. */
const LONGEST = 100;

/**
 * Gives each id a file name of its own that is safe on any system: ASCII letters, digits, `-`, `_` and `.`, and no two
 * that are the same when case is ignored. The same ids in the same order get the same names.
 */
export function fileNames(): (id: string) => string {
  const taken = new Set<string>();
  return (id) => {
    const base = id
      .slice(0, LONGEST)
      .replace(/[^A-Za-z0-9._-]/g, '_')
      .replace(DEVICE, '$&_');
    let name = base;
    for (let number = 2; taken.has(name.toLowerCase()); number += 1) name = `${base}-${number}`;
    taken.add(name.toLowerCase());
    return name;
  };
}
