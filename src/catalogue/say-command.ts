/**
 * A command as it can be typed, for the end of a message: `kinfonds arrange my-family --settle`. The folder in which
 * one is needs no name.
 * @param folder the catalogue folder
 */
export const sayCommand = (command: string, folder: string, ...more: readonly string[]): string =>
  ['kinfonds', command, ...(folder === '.' ? [] : [typed(folder)]), ...more].join(' ');

/** A path as it can be typed; within double quotation marks both POSIX shells and Windows take blanks. */
export const typed = (path: string): string => (/^[\w./~-]+$/.test(path) ? path : `"${path}"`);
