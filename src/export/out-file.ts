/** A file that a format makes. */
export interface OutFile {
  /** Below the export folder; one that lies in a folder (`eac-cpf/ada-quill.xml`) belongs to that folder as a whole. */
  path: string;
  /** Whether it is XML, to be held against a schema. */
  xml: boolean;
  content: Iterable<string>;
}
