/** scheme://user@host:port/path?query#fragment, RFC 3986. A host is a name here: no register is known by an IPv6 number. */
const ADDRESS =
  /^[a-z][a-z0-9+.-]*:\/\/(?:[^@/?#]*@)?[^@:/?#]+(?::\d{1,5})?(?:\/[^?#]*)?(?:\?[^#]*)?(?:#[^#]*)?$/i;

/**
 * An address (https://example.org/n79) as xs:anyURI takes it in every reading.
 * @returns undefined for what is none, such as a plain number
 */
export function addressOf(text: string | undefined): string | undefined {
  if (text === undefined) return undefined;
  // Left as it is, but for what may not stand in an address.
  const address = text
    .trim()
    .replace(/%(?![0-9A-Fa-f]{2})/g, '%25')
    .replace(/[^A-Za-z0-9._~:/?#@!$&'()*+,;=%-]+/g, encodeURIComponent);
  return ADDRESS.test(address) ? address : undefined;
}
