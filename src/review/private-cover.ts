import { isOpen } from '../arrange/index.ts';
import type { Catalogue } from '../catalogue/catalogue.ts';
import type { AccessConditions, Component } from '../catalogue/component.ts';
import type { FindingAid } from '../catalogue/finding-aid.ts';
import type { Thing } from '../catalogue/thing.ts';
import { lastYear } from '../dates/index.ts';

/** What holds a thing back. */
export interface Cover {
  /** The last year in which it is closed; undefined where nobody has said it. */
  until: number | undefined;
}

// What is said of a whole may be of some things in it only, unless it begins so or names an end.
const CLOSED = /^(?:all |wholly |entirely )?(?:closed|restricted|private|confidential|not open|no access)\b/i;

/**
 * What holds a thing back: its own access condition, else that of its group, else that of the collection; undefined
 * where nothing does. What the list says of a thing itself goes before all others: DACS 4.1.
 */
export function coverFrom({ settings }: Catalogue, aid: FindingAid): (thing: Thing) => Cover | undefined {
  const whole = coverBy(aid.collection.accessConditions);
  // The finding aid of a large collection is long; it is read only where a group has words on access.
  const said = Object.values(settings.groups).some(({ access }) => access !== undefined);
  const ofGroups = said ? coversOfGroups(aid.collection) : () => undefined;
  return (thing) => {
    const { access, until } = thing;
    if (isOpen(access)) return undefined;
    const end = until?.reading.kind === 'date' ? lastYear(until.reading.edtf) : undefined;
    if (end !== undefined) return { until: end };
    const above = longer(ofGroups(thing), whole);
    if (above?.until !== undefined) return above;
    return access === undefined && until === undefined ? above : { until: undefined };
  };
}

function coverBy(conditions: AccessConditions | undefined): Cover | undefined {
  if (conditions === undefined) return undefined;
  const { statement, until } = conditions;
  if (until === undefined && !CLOSED.test(statement)) return undefined;
  return isOpen(statement) ? undefined : { until: until === undefined ? undefined : lastYear(until) };
}

function longer(a: Cover | undefined, b: Cover | undefined): Cover | undefined {
  if (a === undefined || b === undefined) return a ?? b;
  return (a.until ?? 0) >= (b.until ?? 0) ? a : b;
}

const keyOf = (title: string, description: string | undefined) => `${title}\n${description ?? ''}`;

/** The cover of the groups, for things as they lie in the finding aid. */
function coversOfGroups(collection: Component): (thing: Thing) => Cover | undefined {
  const covers = new Map<string, Cover | undefined>();
  const walk = (component: Component, above: Cover | undefined) => {
    for (const child of component.children) {
      if (child.children.length > 0) walk(child, longer(coverBy(child.accessConditions), above));
      else {
        const key = keyOf(child.title, child.scopeAndContent);
        // Two things that say the same of themselves are covered if both are.
        covers.set(key, covers.has(key) && covers.get(key) === undefined ? undefined : above);
      }
    }
  };
  walk(collection, undefined);
  return ({ title, description }) => covers.get(keyOf(title, description));
}
