import type { Finding } from '../catalogue/finding.ts';
import { sayIssues } from '../catalogue/say-issue.ts';
import { type Settings, settings as schema } from '../catalogue/settings.ts';
import { decodeText } from './decode.ts';
import { dateTrouble } from './settings-dates.ts';
import { nameTrouble, relationTrouble } from './settings-people.ts';
import { placeIn, readYaml } from './yaml-source.ts';

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
          place: placeIn(source, file, path),
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

function byLine(findings: Finding[]): Finding[] {
  return findings.sort((one, other) => (one.place.line ?? 0) - (other.place.line ?? 0));
}
