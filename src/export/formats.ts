import type { FindingAid } from '../catalogue/finding-aid.ts';
import { findingAidToJson } from '../catalogue/finding-aid-file.ts';
import { writeXml } from '../xml/write.ts';
import { csv } from './csv.ts';
import { ead3 } from './ead3/index.ts';
import type { FormatName } from './format-names.ts';

interface Format {
  /** The file that it makes in the export folder. */
  file: string;
  /** Whether it is XML, to be held against a schema. */
  xml: boolean;
  write: (aid: FindingAid) => Iterable<string>;
}

/** How each format is written. A new one is one more row here, and its name in format-names.ts. */
export const FORMATS: Readonly<Record<FormatName, Format>> = {
  ead3: { file: 'ead3.xml', xml: true, write: (aid) => writeXml(ead3(aid)) },
  json: { file: 'finding-aid.json', xml: false, write: findingAidToJson },
  csv: { file: 'finding-aid.csv', xml: false, write: csv },
};
