import type { Control } from '../catalogue/finding-aid.ts';
import { languageUse } from '../catalogue/languages.ts';
import type { Settings } from '../catalogue/settings.ts';
import { codesFor } from './reference-codes.ts';
import { UNSTATED_RIGHTS } from './stand-ins.ts';

/**
 * The control of the description: ISAD(G) 3.7, DACS 8.
 * @param today the day of the description where `collection.yaml` names none, as YYYY-MM-DD
 */
export function describeControl(settings: Settings, today: string): Control {
  const described = settings.described ?? today;
  const { author, repository, rights, rightsAddress } = settings;
  return {
    recordId: codesFor(settings).top.referenceCode,
    title: `Finding aid to the ${withoutArticle(settings.title)}`,
    ...(author !== undefined && { author }),
    publisher: repository.name,
    ...(repository.address !== undefined && { publisherAddress: repository.address }),
    publicationDate: described,
    maintenanceStatus: 'new',
    publicationStatus: 'inprocess',
    maintenanceAgency: repository,
    languages: [languageUse(settings.language) ?? { code: 'und', name: settings.language }],
    conventions: [
      { abbreviation: 'DACS', citation: 'Describing Archives: A Content Standard' },
      {
        abbreviation: 'ISAD(G)',
        citation: 'ISAD(G): General International Standard Archival Description, second edition',
      },
    ],
    rights: [
      { citation: rights ?? UNSTATED_RIGHTS, ...(rightsAddress !== undefined && { address: rightsAddress }) },
    ],
    sources: settings.sources,
    history: [
      author === undefined
        ? { type: 'created', date: described, agent: 'kinfonds', agentType: 'machine' }
        : { type: 'created', date: described, agent: author, agentType: 'human' },
    ],
  };
}

/** "The Quill papers" after "Finding aid to the" loses its own article. */
const withoutArticle = (title: string) => title.replace(/^the\s+/i, '');
