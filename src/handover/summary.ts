import type { Arrangement } from '../arrange/index.ts';
import type { Catalogue } from '../catalogue/catalogue.ts';
import type { Component, Repository } from '../catalogue/component.ts';
import type { Finding } from '../catalogue/finding.ts';
import { isSettled } from '../catalogue/settled.ts';
import { unitsFrom } from '../catalogue/units.ts';
import { displayDate } from '../dates/index.ts';
import { sayExtent } from '../housing/extent.ts';
import type { CopyToGive } from './copies-to-give.ts';
import type { InventoryRow } from './inventory.ts';

/** What the papers say of a collection that is handed over, each once and in words. */
export interface Summary {
  title: string;
  code: string;
  giver: Repository;
  recipient?: { name: string; address: readonly string[] };
  author?: string;
  described?: string;
  abstract?: string;
  arrangement?: string;
  access?: string;
  use?: string;
  dates: string;
  /** The room on the shelf; what is counted stands in the inventory. Blank where nothing takes room. */
  extent: string;
  creators: readonly string[];
  languages: readonly string[];
  groups: readonly { code: string; title: string; dates: string; extent: string }[];
  /** The code of a thing, for an example. */
  example?: string;
  restricted: readonly { code: string; title: string; statement: string; until?: string }[];
  /** Things of which the list (or a finding aid that was taken in) notes the condition. */
  withCondition: number;
  /** Whether the collection came with a finding aid of others, whose codes and order are theirs. */
  isTakenIn: boolean;
  /** Whether every thing of the list has its numbers for good, so that they can stand on folders and boxes. */
  isSettled: boolean;
  /** How many rows the list has; a finding aid that was taken in may have none beside it. */
  listed: number;
  /** What can hurt somebody or spread. */
  dangers: readonly Finding[];
  rows: readonly InventoryRow[];
  copies: readonly CopyToGive[];
}

/**
 * @param rows the inventory
 * @param findings of the review of what is given
 */
export function summaryOf(
  { aid }: Pick<Arrangement, 'aid'>,
  { settings, things, settled, base }: Pick<Catalogue, 'settings' | 'things' | 'settled' | 'base'>,
  rows: readonly InventoryRow[],
  copies: readonly CopyToGive[],
  findings: readonly Finding[],
): Summary {
  const { collection, people, control } = aid;
  const names = new Map(people.map(({ id, name }) => [id, name]));
  const optional = {
    recipient: settings.recipient,
    author: settings.author,
    described: settings.described,
    abstract: base === undefined ? settings.abstract : collection.abstract,
    arrangement: collection.arrangement,
    access: collection.accessConditions?.statement,
    use: collection.useConditions,
    example: exampleIn(collection),
  };
  return {
    ...(Object.fromEntries(
      Object.entries(optional).filter(([, value]) => value !== undefined),
    ) as Partial<Summary>),
    title: collection.title,
    code: collection.referenceCode ?? control.recordId,
    giver: settings.repository,
    dates: datesOf(collection),
    extent:
      (base === undefined ? settings.extent : undefined) ??
      roomOf(collection, base === undefined && rows.some(({ box }) => box?.type === 'package')),
    creators: collection.creators.map(({ agent }) => names.get(agent) ?? agent),
    languages: collection.languages.filter(({ code }) => code !== 'und').map(({ name }) => name),
    groups: collection.children.map((unit) => ({
      code: unit.referenceCode ?? '',
      title: unit.title,
      dates: datesOf(unit),
      extent: sayExtent(unit.extents.filter(({ type }) => type === 'materialtype')),
    })),
    restricted: [...restrictedIn(collection)],
    withCondition:
      things.filter(({ condition }) => condition !== undefined).length +
      [...unitsIn(base)].filter(({ physicalCharacteristics }) => physicalCharacteristics !== undefined)
        .length,
    isTakenIn: base !== undefined,
    isSettled: isSettled({ things, settled }),
    listed: things.length,
    dangers: findings.filter(({ rule }) => rule.startsWith('danger.')),
    rows,
    copies,
  };
}

/** Worked out from boxes; packages are of no known size. */
function roomOf({ extents }: Component, hasPackages: boolean): string {
  const room = sayExtent(extents.filter(({ type }) => type === 'spaceoccupied'));
  return room !== '' && hasPackages ? `${room}, without the packages` : room;
}

const unitsIn = (base: Catalogue['base']) => (base === undefined ? [] : unitsFrom(base.collection));

const datesOf = ({ dates }: Component) => dates.map(({ expression }) => expression).join(', ');

function exampleIn(unit: Component): string | undefined {
  const [first] = unit.children;
  return first === undefined ? unit.referenceCode : exampleIn(first);
}

function* restrictedIn(unit: Component): Generator<Summary['restricted'][number]> {
  const { accessConditions: conditions, referenceCode: code = '', title } = unit;
  if (conditions?.restricted === true) {
    const { statement, until } = conditions;
    yield { code, title, statement, ...(until !== undefined && { until: displayDate(until) }) };
  }
  for (const child of unit.children) yield* restrictedIn(child);
}
