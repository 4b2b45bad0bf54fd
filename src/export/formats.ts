import type { FindingAid } from '../catalogue/finding-aid.ts';
import { findingAidToJson } from '../catalogue/finding-aid-file.ts';
import type { FormatName } from '../catalogue/format-names.ts';
import { writeXml } from '../xml/write.ts';
import { csv } from './csv.ts';
import { dcterms, dublinCore } from './dublin-core/index.ts';
import { eacCpfRecords } from './eac-cpf/records.ts';
import { ead3 } from './ead3/index.ts';
import { ead2002 } from './ead2002/index.ts';
import { html, type Thumbnail } from './html/index.ts';
import type { OutFile } from './out-file.ts';

/** Small pictures of digital copies, by the path that the finding aid has. */
export type Pictures = ReadonlyMap<string, Thumbnail>;

/** How each format is written: the files that it makes in the export folder. */
export const FORMATS: Readonly<
  Record<FormatName, (aid: FindingAid, pictures?: Pictures) => Iterable<OutFile>>
> = {
  ead3: (aid) => [{ path: 'ead3.xml', xml: true, content: writeXml(ead3(aid)) }],
  ead2002: (aid) => [{ path: 'ead2002.xml', xml: true, content: writeXml(ead2002(aid)) }],
  dc: (aid) => dublinCore(aid),
  dcterms: (aid) => dcterms(aid),
  'eac-cpf': (aid) => eacCpfRecords(aid),
  html: (aid, thumbnails) => [
    {
      path: 'finding-aid.html',
      xml: false,
      content: html(aid, thumbnails === undefined ? {} : { thumbnails }),
    },
  ],
  json: (aid) => [{ path: 'finding-aid.json', xml: false, content: findingAidToJson(aid) }],
  csv: (aid) => [{ path: 'finding-aid.csv', xml: false, content: csv(aid) }],
};

/** The folders that belong to a format as a whole: whatever stands in them is replaced. */
export const FOLDERS: Readonly<Partial<Record<FormatName, string>>> = {
  dc: 'dublin-core',
  dcterms: 'dcterms',
  'eac-cpf': 'eac-cpf',
};
