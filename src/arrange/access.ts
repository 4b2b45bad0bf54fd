import type { AccessConditions } from '../catalogue/component.ts';
import type { Settings } from '../catalogue/settings.ts';
import { readDate } from '../dates/index.ts';

/** Conditions governing access as `collection.yaml` states them: DACS 4.1. */
export function accessFromSettings({ statement, until }: NonNullable<Settings['access']>): AccessConditions {
  const reading = until === undefined ? undefined : readDate(until);
  if (reading?.kind !== 'date') return { statement, restricted: false };
  return { statement, restricted: true, until: reading.edtf };
}
