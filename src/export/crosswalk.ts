import { ACCESS_POINTS } from './crosswalk/access-points.ts';
import { AGENTS } from './crosswalk/agents.ts';
import { ALLIED } from './crosswalk/allied.ts';
import { CONDITIONS } from './crosswalk/conditions.ts';
import { CONTENT } from './crosswalk/content.ts';
import { CONTROL } from './crosswalk/control.ts';
import { IDENTITY } from './crosswalk/identity.ts';
import type { Row } from './crosswalk/row.ts';

/**
 * The crosswalk in its parts, in the order of ISAD(G). Within a part, rows that share an element of Dublin Core stand
 * in the order in which their values are written.
 */
export const CROSSWALK_PARTS: readonly { title: string; rows: readonly Row[] }[] = [
  { title: 'Identity', rows: IDENTITY },
  { title: 'Context, content and structure', rows: CONTENT },
  { title: 'People, families and corporate bodies', rows: AGENTS },
  { title: 'Conditions of access and use', rows: CONDITIONS },
  { title: 'Allied materials and notes', rows: ALLIED },
  { title: 'Access points', rows: ACCESS_POINTS },
  { title: 'Control of the description', rows: CONTROL },
];

/** A row for each element of the model: its number in ISAD(G) and DACS, and its place in every format. */
export const CROSSWALK: readonly Row[] = CROSSWALK_PARTS.flatMap(({ rows }) => rows);
