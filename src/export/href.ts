/** The address of a digital copy as an attribute holds it: RFC 3986. */
export function hrefOf(file: string): string {
  // An address is left as it is, but for the characters that none may hold.
  if (/^[a-z][a-z0-9+.-]*:\/\//i.test(file)) return file.replace(/[\s<>"]/g, encodeURIComponent);
  return file.split('/').map(encodeURIComponent).join('/');
}
