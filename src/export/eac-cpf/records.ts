import type { FindingAid } from '../../catalogue/finding-aid.ts';
import { writeXml } from '../../xml/write.ts';
import { fileNames } from '../file-names.ts';
import type { OutFile } from '../out-file.ts';
import { contextOf } from './context.ts';
import { hasRecord } from './has-record.ts';
import { eacCpf } from './index.ts';

/** A record in EAC-CPF for each agent of which more is known than a name, one file each in the folder `eac-cpf`. */
export function* eacCpfRecords(aid: FindingAid): Generator<OutFile> {
  const context = contextOf(aid);
  const fileName = fileNames();
  for (const agent of aid.people.filter(hasRecord)) {
    const path = `eac-cpf/${fileName(agent.id)}.xml`;
    yield { path, xml: true, content: writeXml(eacCpf(agent, aid, context)) };
  }
}
