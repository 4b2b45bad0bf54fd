import type { FoundSchema } from './schemas.ts';

/** One thing that is wrong with a file. Lines and columns count from 1. */
export interface ValidationMessage {
  line: number;
  /** Known only where the file is not well-formed XML. */
  column?: number;
  /** The element, such as `/ead/archdesc/dsc/c[3]/did`; unknown where the file is not well-formed XML. */
  path?: string;
  element?: string;
  /** In plain words, as sentences. */
  says: string;
  /** In the words of libxml2, for those who know them; undefined where it is this program that objects. */
  engine?: string;
}

/** What came of holding a file against its schema. */
export interface Validation {
  file: string;
  /** EAD3, for instance; undefined where the file is not well-formed XML, or of no format that is known. */
  format?: string;
  /** Which schema spoke; undefined where none was asked. */
  schema?: Pick<FoundSchema, 'name' | 'version' | 'kind' | 'path' | 'note'>;
  valid: boolean;
  /** What the file is and how it was therefore read, where it is in an older form of its format; in sentences. */
  notice?: string;
  messages: ValidationMessage[];
  /** How many messages there were beyond those. */
  more: number;
  /** What is doubtful in a valid file, such as a reference to an id that no element has. */
  remarks: ValidationMessage[];
}
