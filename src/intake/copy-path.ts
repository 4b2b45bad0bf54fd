// The usual case at a glance: names parted by single slashes, none beginning with a dot.
const PLAIN = /^[\w][\w ()-]*(?:[./][\w ()-]+)*$/;

/** Path of a digital copy below the catalogue folder, an address on the web, or why it can be neither. */
type CopyPath = { path: string } | { trouble: string };

/**
 * Reads what the list says of a digital copy. Paths come out with forward slashes and without `.` and `..`;
 * one that leads out of the catalogue folder is refused, for a catalogue must be complete in itself.
 */
export function readCopyPath(written: string): CopyPath {
  if (PLAIN.test(written)) return { path: written };
  if (/^https?:\/\/[^\s/]+\S*$/i.test(written)) return { path: written };
  if (/^[a-z]:/i.test(written)) return outside(written, 'begins with the letter of a drive');
  if (/^[a-z][a-z0-9+.-]*:/i.test(written))
    return outside(written, 'is no address that can be used: one begins with https:// and holds no blank');
  const slashes = written.replaceAll('\\', '/');
  if (slashes.startsWith('/')) return outside(written, 'begins at the root of a disk');
  if (slashes === '~' || slashes.startsWith('~/')) return outside(written, 'begins at a home folder');
  const parts: string[] = [];
  for (const part of slashes.split('/')) {
    if (part === '' || part === '.') continue;
    if (part !== '..') parts.push(part);
    else if (parts.pop() === undefined)
      return outside(written, 'leads out of the catalogue folder with “..”');
  }
  if (parts.length === 0 || slashes.endsWith('/'))
    return { trouble: `“${written}” names a folder, not a file.` };
  const path = parts.join('/');
  // Without its leading ./ the name could be taken for an address.
  return /^[a-z][a-z0-9+.-]*:/i.test(path) ? outside(written, 'begins like an address') : { path };
}

function outside(written: string, why: string): CopyPath {
  return { trouble: `The path “${written}” ${why}.` };
}
