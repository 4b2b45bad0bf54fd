import { CatalogueError, type Finding } from './finding.ts';
import { type FindingAid, findingAid } from './finding-aid.ts';
import { sayIssues } from './say-issue.ts';

export { findingAidToJson } from './finding-aid-json.ts';

/** The file in which an export keeps the finding aid in this project's own format. */
export const FINDING_AID_FILE = 'finding-aid.json';

/**
 * Reads a finding aid in this project's own format.
 * @param file the name for messages
 * @throws CatalogueError with everything that is wrong with it
 */
export function findingAidFromJson(text: string, file: string = FINDING_AID_FILE): FindingAid {
  let data: unknown;
  try {
    data = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch (error) {
    throw new CatalogueError([notJson(text, file, error)]);
  }
  const later = laterVersion(data);
  const place = { file };
  if (later !== undefined) {
    const found = `The file is in version ${later} of the format; this program reads version 1.`;
    const advice = 'Read it with a later release of kinfonds.';
    throw new CatalogueError([{ rule: 'finding-aid.version', weight: 'must', place, found, advice }]);
  }
  const parsed = findingAid.safeParse(data);
  if (parsed.success) return parsed.data;
  throw new CatalogueError(
    sayIssues(parsed.error.issues, findingAid, data).map(
      ({ path: _, ...issue }): Finding => ({ rule: 'finding-aid.entry', weight: 'must', place, ...issue }),
    ),
  );
}

function laterVersion(data: unknown): number | undefined {
  if (typeof data !== 'object' || data === null || !('version' in data)) return undefined;
  return typeof data.version === 'number' && data.version > 1 ? data.version : undefined;
}

function notJson(text: string, file: string, error: unknown): Finding {
  const position = /at position (\d+)/.exec(String(error))?.[1];
  const line = position === undefined ? {} : { line: text.slice(0, Number(position)).split('\n').length };
  const found =
    text.trim() === '' ? 'The file is empty.' : 'The file is not whole JSON: it breaks off or holds a slip.';
  const advice = 'Export the finding aid once more, or mend the file by hand.';
  return { rule: 'finding-aid.json', weight: 'must', place: { file, ...line }, found, advice };
}
