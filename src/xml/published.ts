import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** One file of a published schema. */
export interface PublishedFile {
  name: string;
  /** Where its publisher keeps it, over HTTPS; the first that answers with the right bytes is taken. */
  addresses: readonly string[];
  /**
   * Of the release that the tests ran against, with what it imports lying beside it (`importsBeside`), in lower-case
   * hexadecimal.
   */
  sha256: string;
  /**
   * What this file imports: under which address it names the other file (as its publisher left it), and the name of
   * that file in this list.
   */
  imports: readonly { as: string; file: string }[];
}

/** A published schema: one row of `xsd/published.json`. */
export interface PublishedSchema {
  /** Short name; also that of the subfolder in which its files may lie, unless `folder` names another. */
  id: string;
  /** A subfolder that it shares with other schemas of its publisher. */
  folder?: string;
  /** The name of the format, as people say it: EAD3. */
  format: string;
  name: string;
  version: string;
  /** The namespace and local name of the root element by which a document of the format is known. */
  namespace: string;
  root: string;
  /** Attributes that point to an id in the same file (xs:IDREF, xs:IDREFS). */
  references: readonly string[];
  /** Attributes that hold a date in one of several forms, with an upper bound. */
  dates: readonly string[];
  /** The file to begin with. */
  main: string;
  /**
   * A file of this project that imports `main` and declares the root, where the published schema declares elements
   * and leaves the root to those who use them.
   */
  container?: string;
  files: readonly PublishedFile[];
  /** This project's own schema for the part of the format that it writes. */
  profile: { name: string; version: string; file: string };
}

/** The folder `xsd` of this project, both from `src/xml` and from `dist/xml`. */
export const XSD_FOLDER = join(dirname(fileURLToPath(import.meta.url)), '..', '..', 'xsd');

/** The published schemas that are known, in the order in which they are listed to people. */
export const PUBLISHED: readonly PublishedSchema[] = (
  JSON.parse(readFileSync(join(XSD_FOLDER, 'published.json'), 'utf8')) as { schemas: PublishedSchema[] }
).schemas;
