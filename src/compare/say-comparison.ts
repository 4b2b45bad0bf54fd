import type { AgentName, Changed, Comparison, UnitName } from './model.ts';
import { sayFields } from './say-fields.ts';
import { sayFollowing, sayMoved, sayPlaced, sayUnit } from './say-units.ts';

/** A part of a comparison: its heading, of how many it tells, how that is said in the summary, its lines. */
interface Part {
  heading: string;
  count: number;
  summary: string;
  lines: Iterable<string>;
}

/** A comparison as lines of plain text: a summary, then each part of it under a heading. */
export function* sayComparison(comparison: Comparison): Generator<string> {
  const told = partsOf(comparison).filter(({ count }) => count > 0);
  if (told.length === 0) {
    yield 'No difference.';
    return;
  }
  yield `${told.map(({ summary }) => summary).join(', ')}.`;
  for (const { heading, count, lines } of told) {
    yield '';
    yield `${heading} (${count})`;
    for (const line of lines) yield `  ${line}`;
  }
}

function partsOf({ added, removed, moved, changed, people, description }: Comparison): Part[] {
  const { own, recoded, shelved } = sorted(changed, new Set(moved.map(({ now }) => now.id)));
  const agents = people.added.length + people.removed.length + people.changed.length;
  const part = (heading: string, count: number, summary: string, lines: Iterable<string>): Part => ({
    heading,
    count,
    summary: `${count} ${summary}`,
    lines,
  });
  return [
    part('Added', added.length, `${units(added)} added`, sayPlaced(added)),
    part('Removed', removed.length, `${units(removed)} removed`, sayPlaced(removed)),
    part('Moved', moved.length, `${units(moved)} moved`, sayMoved(moved)),
    part('Changed', own.length, `${units(own)} changed`, sayAll(own, sayUnit)),
    part('Lying elsewhere', shelved.length, `${units(shelved)} only lying elsewhere`, sayFollowing(shelved)),
    part(
      'With another reference code',
      recoded.length,
      `${units(recoded)} only with another reference code`,
      sayFollowing(recoded),
    ),
    part('People', agents, agents === 1 ? 'change in people' : 'changes in people', sayPeople(people)),
    part(
      'The finding aid itself',
      description.length,
      description.length === 1 ? 'change in the finding aid itself' : 'changes in the finding aid itself',
      sayFields(description),
    ),
  ];
}

const units = ({ length }: readonly unknown[]) => (length === 1 ? 'unit' : 'units');

/** Sets apart what changes of itself when something else is put in or taken out: codes by place, and places on the shelf. */
function sorted(changed: Comparison['changed'], moved: ReadonlySet<string>) {
  const own: Changed<UnitName>[] = [];
  const recoded: Changed<UnitName>[] = [];
  const shelved: Changed<UnitName>[] = [];
  for (const one of changed) {
    const fields = one.fields.map(({ field }) => field).filter((field) => field !== 'referenceCode');
    if (fields.length === 0) {
      // Where it moved, its code is told there.
      if (!moved.has(one.now.id)) recoded.push(one);
    } else if (fields.every((field) => field === 'containers' || field === 'physicalLocation'))
      shelved.push(one);
    else own.push(one);
  }
  return { own, recoded, shelved };
}

function* sayAll<Name>(
  changed: readonly Changed<Name>[],
  say: (was: Name, now: Name) => string,
): Generator<string> {
  for (const { was, now, fields } of changed) {
    yield say(was, now);
    for (const line of sayFields(fields.filter(({ field }) => field !== 'referenceCode'))) yield `  ${line}`;
  }
}

function* sayPeople({ added, removed, changed }: Comparison['people']): Generator<string> {
  for (const one of added) yield `added: ${sayAgent(one)}`;
  for (const one of removed) yield `removed: ${sayAgent(one)}`;
  yield* sayAll(changed, sayAgent);
}

const TYPE: Readonly<Record<string, string>> = { family: ' (family)', corporateBody: ' (corporate body)' };

const sayAgent = ({ name, type }: AgentName): string => `${name.replace(/\s+/g, ' ')}${TYPE[type] ?? ''}`;
