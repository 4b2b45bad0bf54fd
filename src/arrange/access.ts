import type { AccessConditions } from '../catalogue/component.ts';
import { fold } from '../catalogue/fold.ts';
import type { Settings } from '../catalogue/settings.ts';
import { type DateContext, readDate } from '../dates/index.ts';

/** Words by which a list says that anybody may see a thing. Common practice. */
const OPEN = new Set([
  'open',
  'anyone',
  'anybody',
  'everyone',
  'everybody',
  'all',
  'public',
  'unrestricted',
  'no restriction',
  'no restrictions',
  'yes',
  'free',
]);

/** Whether the access column says that anybody may see the thing; a blank one says nothing. */
export function isOpen(access: string | undefined): boolean {
  return access !== undefined && OPEN.has(fold(access));
}

/**
 * Conditions governing access as `collection.yaml` states them: DACS 4.1.
 * @param restricted whether they close the unit: what is said of the whole collection may be of some things in it only
 */
export function accessFromSettings(
  { statement, until }: NonNullable<Settings['access']>,
  restricted: boolean,
  context: DateContext,
): AccessConditions {
  const reading = until === undefined ? undefined : readDate(until, { ...context, whole: true });
  return { statement, restricted, ...(reading?.kind === 'date' && { until: reading.edtf }) };
}
