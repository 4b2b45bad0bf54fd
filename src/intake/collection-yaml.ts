import { dateContextOf } from '../catalogue/date-context.ts';
import type { Finding } from '../catalogue/finding.ts';
import { fold } from '../catalogue/fold.ts';
import { nearest } from '../catalogue/nearest.ts';
import { sayIssues } from '../catalogue/say-issue.ts';
import { type Settings, settings as schema } from '../catalogue/settings.ts';
import { displayDate, readDate } from '../dates/index.ts';
import { decodeText } from './decode.ts';
import { readYaml, type YamlSource } from './yaml-source.ts';

const SAVE_AS = 'Save it again from a text editor as plain text in UTF-8.';

/**
 * Reads collection.yaml.
 * @param file the name for messages
 * @returns the settings, or undefined where a finding weighs `must`
 */
export function readSettings(bytes: Uint8Array, file: string): { settings?: Settings; findings: Finding[] } {
  const decoded = decodeText(bytes, file, SAVE_AS);
  if ('trouble' in decoded) return { findings: [decoded.trouble] };
  const { source, findings } = readYaml(decoded.text, file);
  if (source === undefined) return { findings };
  if (typeof source.data !== 'object' || source.data === null || Array.isArray(source.data)) {
    const found =
      source.data === null ? 'The file is empty.' : 'The file does not hold entries (name: value).';
    const advice =
      'It must say at least title, prefix and repository, each on a line of its own, such as title: Quill family papers.';
    return { findings: [{ rule: 'settings.none', weight: 'must', place: { file }, found, advice }] };
  }
  const parsed = schema.safeParse(source.data);
  if (!parsed.success) {
    const said = sayIssues(parsed.error.issues, schema, source.data);
    return {
      findings: byLine(
        said.map(({ path, ...issue }) => ({
          rule: 'settings.entry',
          weight: 'must',
          place: placeOf(source, file, path),
          ...issue,
        })),
      ),
    };
  }
  const found = byLine([
    ...dateTrouble(parsed.data, source, file),
    ...nameTrouble(parsed.data, source, file),
    ...relationTrouble(parsed.data, source, file),
  ]);
  return found.some(({ weight }) => weight === 'must')
    ? { findings: found }
    : { settings: parsed.data, findings: found };
}

function placeOf(source: YamlSource, file: string, path: readonly PropertyKey[]): Finding['place'] {
  const line = source.lineOf(path);
  return line === undefined ? { file } : { file, line };
}

function byLine(findings: Finding[]): Finding[] {
  return findings.sort((one, other) => (one.place.line ?? 0) - (other.place.line ?? 0));
}

/** Every date of the settings that cannot be read. The end of a restriction above all must not be guessed. */
function dateTrouble(settings: Settings, source: YamlSource, file: string): Finding[] {
  const { dates, described, access, people, groups } = settings;
  const until = (conditions: Settings['access']) =>
    conditions !== undefined && 'until' in conditions ? conditions.until : undefined;
  const written: [path: PropertyKey[], date: string | undefined][] = [
    [['dates'], dates],
    [['described'], described],
    [['access', 'until'], until(access)],
    ...people.flatMap(({ born, died }, at): [PropertyKey[], string | undefined][] => [
      [['people', at, 'born'], born],
      [['people', at, 'died'], died],
    ]),
    ...Object.entries(groups).map(([title, group]): [PropertyKey[], string | undefined] => [
      ['groups', title, 'access', 'until'],
      until(group.access),
    ]),
  ];
  const context = dateContextOf(settings);
  return written.flatMap(([path, date]): Finding[] => {
    if (date === undefined) return [];
    const place = placeOf(source, file, path);
    const isEnd = path.at(-1) === 'until';
    const isOfPapers = !isEnd && path.at(-1) !== 'described';
    const { earliestYear: _, latestYear: __, ...ahead } = context;
    const reading = readDate(date, isOfPapers ? context : ahead);
    const name = path.filter((step) => typeof step === 'string').join(' › ');
    if (
      isEnd &&
      (reading.kind === 'undated' || (reading.kind === 'date' && reading.alternatives !== undefined))
    ) {
      const found = `The end of the restriction, “${date}” at “${name}”, must be one certain date.`;
      return [
        {
          rule: 'settings.end-uncertain',
          weight: 'must',
          place,
          found,
          advice: 'Write it as 2050 or 2050-05-14.',
        },
      ];
    }
    if (reading.kind === 'unreadable') {
      const found = `The date “${date}” at “${name}” could not be read: ${reading.reason}`;
      const advice = 'Write it as 1962, 1962-05-14, 1958-1963, c. 1950 or 1950s.';
      return [{ rule: 'settings.date-unreadable', weight: 'must', place, found, advice }];
    }
    if (reading.kind === 'undated' || reading.assumed.length === 0) return [];
    const found = `The date “${date}” at “${name}” was read as ${displayDate(reading.edtf)}: ${reading.assumed.join(' ')}`;
    return [{ rule: 'settings.date-assumed', weight: 'consider', place, found }];
  });
}

/** A relation can only lead to somebody who stands in the file. */
function relationTrouble({ people }: Settings, source: YamlSource, file: string): Finding[] {
  const names = people.flatMap(({ name, also }) => [name, ...also]);
  const known = new Set(names.map(fold));
  return people.flatMap(({ name, relations }, at) =>
    relations.flatMap(({ to }, index): Finding[] => {
      if (known.has(fold(to))) return [];
      const meant = nearest(to, names);
      const found = `“${name}” is related to “${to}”, but nobody under "people" has that name, so it is left out.`;
      const advice = meant === undefined ? 'Add that person, or mend the name.' : `Is “${meant}” meant?`;
      const place = placeOf(source, file, ['people', at, 'relations', index]);
      return [{ rule: 'settings.relation-to-nobody', weight: 'should', place, found, advice }];
    }),
  );
}

/** Two people with one name could not be told apart in the list. */
function nameTrouble({ people }: Settings, source: YamlSource, file: string): Finding[] {
  const first = new Map<string, number>();
  return people.flatMap(({ name, also }, at) =>
    [...new Set([name, ...also].map(fold))].flatMap((each): Finding[] => {
      const before = first.get(each);
      if (before === undefined) {
        first.set(each, at);
        return [];
      }
      const line = source.lineOf(['people', before]);
      const found = `“${people[at]?.name}” and “${people[before]?.name}” (line ${line}) are both written “${each}”.`;
      const advice = 'Add something that tells them apart, in the list as well, such as Ada Quill the elder.';
      return [
        {
          rule: 'settings.name-twice',
          weight: 'must',
          place: placeOf(source, file, ['people', at]),
          found,
          advice,
        },
      ];
    }),
  );
}
