import { readKind } from '../arrange/index.ts';
import { addTo } from '../catalogue/add-to.ts';
import type { Agent } from '../catalogue/agent.ts';
import { fold } from '../catalogue/fold.ts';
import type { Thing } from '../catalogue/thing.ts';
import type { Kind } from '../kinds/kinds.ts';
import { plainWords } from './plain-words.ts';
import { maskNumbers } from './private-numbers.ts';
import { ANY_OTHER_KIND, RUN_KINDS, RUN_WORDS, type RunKind } from './run-kinds.ts';
import { monthsOf, yearsInTitle, yearsOf } from './run-places.ts';
import type { Filled } from './run-regular.ts';
import { type Head, headOf, numberIn } from './run-titles.ts';

/** Things that may be a run: of one kind, and by their title, their maker or the person they are about one series. */
export interface Series {
  scale: 'year' | 'month' | 'number';
  /** As a sentence begins: The diaries of Ada Quill. */
  name: string;
  filled: Filled[];
}

type AgentOf = (name: string) => Agent | undefined;
type Scale = Series['scale'];

/** One thing in one series that it may belong to. */
interface Belonging {
  key: string;
  name: string;
  maker: string;
  filled: Filled;
}

const KNOWN = new Map(RUN_KINDS.map((kind) => [kind.kind, kind]));
/** Of a series that several made, one must have made this share; else it is one series for each. */
const CHIEF_MAKER = 0.75;

/** All series on one scale that the things may form, whether or not they are regular. */
export function seriesOn(scale: Scale, things: readonly Thing[], agentOf: AgentOf): Series[] {
  const series = new Map<string, Belonging[]>();
  for (const thing of things) {
    const belonging = belongingOf(thing, scale, agentOf);
    if (belonging === undefined) continue;
    addTo(series, belonging.key, belonging);
  }
  return [...series.values()].flatMap((belongings) =>
    byMaker(belongings).map((each) => ({
      scale,
      name: each[0]?.name ?? '',
      filled: each.map(({ filled }) => filled),
    })),
  );
}

function belongingOf(thing: Thing, scale: Scale, agentOf: AgentOf): Belonging | undefined {
  const reading = thing.kind === undefined ? undefined : readKind(thing.kind)?.kind;
  // Most kinds are no run, and need not be read any further.
  if (reading !== undefined && !KNOWN.get(reading.one)?.by.includes(scale)) return undefined;
  const numbered = scale === 'number' ? numberIn(thing.title) : undefined;
  if (scale === 'number' && numbered === undefined) return undefined;
  const head = numbered?.head ?? headOf(thing.title);
  const named = reading ?? kindIn(head.shown);
  const kind = named === undefined ? otherKind(thing, scale, head) : KNOWN.get(named.one);
  if (!kind?.by.includes(scale)) return undefined;
  const place = numbered?.place ?? placeOn(scale, thing, kind);
  if (place === undefined) return undefined;
  const filled = { ...place, row: thing.row };
  const person = nameOf(personFor(thing, kind), agentOf);
  if (kind.of !== 'title' && person !== undefined && named !== undefined) {
    const name =
      kind.of === 'maker' ? `The ${named.many} of ${person}` : `The ${named.many} that name ${person} first`;
    return { key: `${named.one}\n${person}`, name, maker: '', filled };
  }
  if (!head.isNamed && reading === undefined) return undefined;
  const name = head.shown === '' ? `The ${named?.many}` : `The things called “${maskNumbers(head.shown)}”`;
  return { key: `${named?.one ?? fold(thing.kind ?? '')}\n\n${head.key}`, name, maker: person ?? '', filled };
}

/** The kind that a title names, where the kind column is blank or holds no word that is known: Letters sent, Minutes. */
function kindIn(head: string): Kind | undefined {
  const words = head.split(' ');
  const parts = [words, words.slice(-2), words.slice(-1), words.slice(0, 2), words.slice(0, 1)];
  for (const part of parts) {
    const found = readKind(part.join(' '))?.kind;
    if (found !== undefined) return found;
  }
  return undefined;
}

const ANNOUNCE = new Set(RUN_WORDS.words);

/** A thing of a kind that is not known is in a run by year or month only where its own words say so. */
function otherKind(
  { title, kind = '' }: Thing,
  scale: Scale,
  { key }: Head,
): typeof ANY_OTHER_KIND | undefined {
  const words = `${key} ${plainWords(kind)}`.split(' ');
  const isSaid =
    scale === 'number' || yearsInTitle(title) !== undefined || words.some((word) => ANNOUNCE.has(word));
  return isSaid ? ANY_OTHER_KIND : undefined;
}

function placeOn(scale: Scale, thing: Thing, { finerDates = false }: Pick<RunKind, 'finerDates'>) {
  if (scale === 'number') return undefined;
  return scale === 'year' ? yearsOf(thing, finerDates) : monthsOf(thing);
}

const personFor = ({ creators, people }: Thing, { of }: Pick<RunKind, 'of'>): string | undefined =>
  of === 'person' ? people[0] : (creators[0] ?? people[0]);

const nameOf = (name: string | undefined, agentOf: AgentOf): string | undefined =>
  name === undefined ? undefined : (agentOf(name)?.name ?? name);

/** “Pocket diary” may be one series for each of two people; a fair copy in another hand parts no series. */
function byMaker(belongings: readonly Belonging[]): (readonly Belonging[])[] {
  const makers = new Map<string, Belonging[]>();
  for (const each of belongings) {
    addTo(makers, each.maker, each);
  }
  const chief = Math.max(...[...makers.values()].map(({ length }) => length));
  return chief >= CHIEF_MAKER * belongings.length ? [belongings] : [...makers.values()];
}
