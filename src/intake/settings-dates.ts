import { dateContextOf } from '../catalogue/date-context.ts';
import type { Finding } from '../catalogue/finding.ts';
import { sayPath } from '../catalogue/say-issue.ts';
import type { Settings } from '../catalogue/settings.ts';
import { readDate } from '../dates/index.ts';
import { sayReading } from './say-reading.ts';
import { placeIn, type YamlSource } from './yaml-source.ts';

/** Every date of the settings that cannot be read. The end of a restriction above all must not be guessed. */
export function dateTrouble(settings: Settings, source: YamlSource, file: string): Finding[] {
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
    const place = placeIn(source, file, path);
    const isEnd = path.at(-1) === 'until';
    const isOfPapers = !isEnd && path.at(-1) !== 'described';
    const { earliestYear: _, latestYear: __, ...ahead } = context;
    const reading = readDate(date, isOfPapers ? context : { ...ahead, whole: isEnd });
    const said = `The date “${date}” under ${sayPath(path)}`;
    if (
      isEnd &&
      (reading.kind === 'undated' || (reading.kind === 'date' && reading.alternatives !== undefined))
    ) {
      const found = `The end of the restriction, “${date}” under ${sayPath(path)}, must be one certain date.`;
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
      const found = `${said} could not be read: ${reading.reason}`;
      const advice = 'Write it as 1962, 1962-05-14, 1958-1963, c. 1950 or 1950s.';
      return [{ rule: 'settings.date-unreadable', weight: 'must', place, found, advice }];
    }
    if (reading.kind === 'undated' || reading.assumed.length === 0) return [];
    const found = `${said} ${sayReading(reading.edtf, reading.assumed)}`;
    return [{ rule: 'settings.date-assumed', weight: 'consider', place, found }];
  });
}
