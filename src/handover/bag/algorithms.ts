/** A checksum algorithm by which a manifest can be checked. */
interface Algorithm {
  /** As in `manifest-sha512.txt`, and as the system's library of checksums calls it. */
  name: string;
  /** For people. */
  called: string;
  /** Length of its checksum in hexadecimal digits. */
  digits: number;
}

/** RFC 8493, 2.4, names four of them; SHA-224 and SHA-384 are their siblings in FIPS 180-4, and bags with them exist. */
export const ALGORITHMS: readonly Algorithm[] = [
  { name: 'sha512', called: 'SHA-512', digits: 128 },
  { name: 'sha384', called: 'SHA-384', digits: 96 },
  { name: 'sha256', called: 'SHA-256', digits: 64 },
  { name: 'sha224', called: 'SHA-224', digits: 56 },
  { name: 'sha1', called: 'SHA-1', digits: 40 },
  { name: 'md5', called: 'MD5', digits: 32 },
];

/** Those that our own bags carry, the one for archives with RFC 8493, 2.4 first. */
export const OUR_ALGORITHMS = ['sha512', 'sha256'] as const;

const MANIFEST = /^(tag)?manifest-(.+)\.txt$/i;

/** What a file at the top of a bag is a manifest of, and by which algorithm; undefined where it is none. */
export function manifestNamed(file: string): { ofTags: boolean; algorithm: string } | undefined {
  const [, tag, name] = MANIFEST.exec(file) ?? [];
  if (name === undefined) return undefined;
  // RFC 8493, 2.4: the name of the algorithm in lower case, without all that is no letter or figure.
  return { ofTags: tag !== undefined, algorithm: name.toLowerCase().replace(/[^a-z0-9]/g, '') };
}

/** The name of an algorithm for people. */
export function calledAlgorithm(name: string): string {
  return ALGORITHMS.find((algorithm) => algorithm.name === name)?.called ?? name;
}
