import type { Finding } from '../catalogue/finding.ts';
import { nearest } from '../catalogue/nearest.ts';
import type { Settings } from '../catalogue/settings.ts';
import { HAZARDS } from './danger-hazards.ts';
import { DANGER_WORDS, type DangerWord } from './danger-words.ts';
import { HANDLING_WORDS, type HandlingWord, TASKS, type Task } from './handling-words.ts';
import { MATTERS } from './private-matters.ts';
import { PRIVATE_WORDS, type PrivateWord } from './private-words.ts';
import { VAGUE_WORDS, type VagueWords } from './vague-words.ts';

/** The word tables of the rules, with the words that `collection.yaml` adds to them. */
interface WordTables {
  danger: readonly DangerWord[];
  private: readonly PrivateWord[];
  vague: readonly VagueWords[];
  handling: readonly HandlingWord[];
  findings: Finding[];
}

const VAGUE = 'vague';
const source = 'collection.yaml';

/** Every name by which `collection.yaml` says what words of its own mean. */
const MEANINGS: readonly string[] = [
  ...HAZARDS.map(({ name }) => name),
  ...MATTERS.map(({ name }) => name),
  ...Object.keys(TASKS),
  VAGUE,
];

/** The word tables for a catalogue. */
export function wordTables({ check }: Pick<Settings, 'check'>): WordTables {
  const own = {
    danger: [] as DangerWord[],
    private: [] as PrivateWord[],
    vague: [] as VagueWords[],
    handling: [] as HandlingWord[],
    findings: [] as Finding[],
  };
  for (const { words: written, mean } of check.words) {
    const words = written.map((word) => word.toLowerCase());
    const hazard = HAZARDS.find(({ name }) => name === mean)?.name;
    const matter = MATTERS.find(({ name }) => name === mean)?.name;
    if (hazard !== undefined) own.danger.push({ hazard, words, columns: [...COLUMNS], source });
    else if (matter !== undefined) own.private.push({ matter, words, source });
    else if (mean in TASKS) own.handling.push({ task: mean as Task, words, source });
    else if (mean === VAGUE) own.vague.push({ words, source });
    else own.findings.push(unknownMeaning(mean));
  }
  return {
    danger: [...DANGER_WORDS, ...own.danger],
    private: [...PRIVATE_WORDS, ...own.private],
    vague: [...VAGUE_WORDS, ...own.vague],
    handling: [...HANDLING_WORDS, ...own.handling],
    findings: own.findings,
  };
}

const COLUMNS = ['kind', 'title', 'description', 'condition', 'note'] as const;

function unknownMeaning(mean: string): Finding {
  const meant = nearest(mean, MEANINGS);
  return {
    rule: 'check.unknown-meaning',
    weight: 'should',
    place: { file: 'collection.yaml' },
    found: `Words of your own under “check” are to mean “${mean}”, which is the name of no danger, matter or task.`,
    advice: meant === undefined ? `Use one of: ${MEANINGS.join(', ')}.` : `Is “${meant}” meant?`,
  };
}
