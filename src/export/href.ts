// RFC 3986, 2.2 and 2.3: what may stand in an address as it is; a percent sign only before two hexadecimal digits.
const NOT_IN_ADDRESS = /[^\x21-\x7E]|["<>\\^`{|}]|%(?![0-9A-Fa-f]{2})/gu;
const PLAIN = "(?:[A-Za-z0-9._~!$&'()*+,;=-]|%[0-9A-Fa-f]{2})";
const PATH = `(?:${PLAIN}|[:@/])*`;
/** RFC 3986, appendix A: scheme, authority, path, query, fragment. */
const ADDRESS = new RegExp(
  String.raw`^[a-z][a-z0-9+.-]*:\/\/(?:(?:${PLAIN}|:)*@)?(?:${PLAIN}*|\[[0-9a-f:.]+\])(?::\d{1,5})?(?:\/${PATH})?(?:\?(?:${PATH}|\?)*)?(?:#(?:${PATH}|\?)*)?$`,
  'i',
);

/**
 * The address of a digital copy as an attribute holds it. An address stays as it is, but for the characters that none
 * may hold; a path, and whatever is no good address, is percent-encoded step by step (XML Schema holds xlink:href and
 * xs:anyURI to RFC 3986).
 */
export function hrefOf(file: string): string {
  const address = file.replace(NOT_IN_ADDRESS, encodeURIComponent);
  return ADDRESS.test(address) ? address : file.split('/').map(encodeURIComponent).join('/');
}
