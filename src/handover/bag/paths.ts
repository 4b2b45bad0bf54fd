/** RFC 8493, 2.1.3: line ends and the per cent sign, and only those, are written as %0A, %0D and %25. */
export function encodePath(path: string): string {
  return path.replace(/[\r\n%]/g, (sign) => encodeURIComponent(sign));
}

/** The path that a manifest means. Before version 1.0 only line ends were encoded, and a per cent sign stood for itself. */
export function decodePath(written: string, version: string): string {
  return written.replace(isOld(version) ? /%0[AD]/gi : /%(?:0[AD]|25)/gi, decodeURIComponent);
}

/** Whether a bag follows one of the drafts before RFC 8493. */
export function isOld(version: string): boolean {
  return version.startsWith('0.');
}

/** Path below the bag with forward slashes, without `./` and doubled slashes. */
export function plainPath(path: string): string {
  return path
    .split('/')
    .filter((part, at) => part !== '.' && (part !== '' || at === 0))
    .join('/');
}

/**
 * Why a path would lead out of the bag on some system, as the end of a sentence; undefined where it does not. What one
 * system takes for a plain name is a way out on another, so that the answer is the same on all (RFC 8493, 5).
 */
export function leadsOut(path: string): string | undefined {
  if (path.startsWith('/')) return 'begins with a slash, and so at the root of the disk';
  if (path.startsWith('\\')) return 'begins with a backslash, which leads to a disk or another computer';
  if (/^[A-Za-z]:/.test(path)) return 'begins with the letter of a disk';
  if (path.startsWith('~')) return 'begins with a tilde, which stands for somebody’s own folder';
  if (/^%[^%/\\]+%/.test(path)) return 'begins with the name of a setting of the system';
  if (path.split(/[/\\]/).includes('..')) return 'goes up with two dots';
  if (path.includes('\0')) return 'holds a character that no name can have';
  return undefined;
}
