import type { Hit } from './answer.ts';
import { foldWord } from './fold-word.ts';
import type { Reason } from './reasons.ts';
import { withinTerm } from './special-terms.ts';

const FIELD_WORDS: Readonly<Record<Reason['field'], string>> = {
  title: 'title',
  kind: 'kind',
  creators: 'by',
  people: 'people',
  places: 'place',
  occasion: 'occasion',
  dates: 'date',
  description: 'description',
  mentioned: 'named in it',
  note: 'note',
  group: 'group',
  condition: 'condition',
  size: 'size',
  language: 'language',
  other: 'also',
  number: 'number',
  within: 'in',
} satisfies Record<Reason['field'], string>;

/** Why a thing was found: `title: ferri → ferry, bell; condition: “rubber band”; note: cable, in “… of a steel cable”`. */
export function sayReasons({ reasons, above, named }: Hit): string {
  const fields = new Map<string, Set<string>>();
  for (const alike of inOneText(reasons)) {
    const [reason] = alike;
    if (reason.field === 'within') {
      const isFolder = sameCode(above.at(-1)?.referenceCode ?? '', reason.found);
      // What a finding aid of others is made of may be of any level.
      const kind = named !== undefined ? '' : isFolder ? 'folder ' : 'group ';
      fields.set(`in ${kind}${reason.found}`, new Set());
      continue;
    }
    // Subjects of others need not be occasions.
    const word = named !== undefined && reason.field === 'occasion' ? 'subject' : FIELD_WORDS[reason.field];
    const said = fields.get(word) ?? new Set();
    fields.set(word, said.add(alike.length === 1 ? sayReason(reason) : saySeveral(alike)));
  }
  return [...fields]
    .map(([word, said]) => (said.size === 0 ? word : `${word}: ${[...said].join(', ')}`))
    .join('; ');
}

const sameCode = (one: string, other: string): boolean => withinTerm(one) === withinTerm(other);

type Reasons = [Reason, ...Reason[]];

/** Reasons of which the same words of one text are the ground. */
function inOneText(reasons: readonly Reason[]): Reasons[] {
  const groups: Reasons[] = [];
  for (const reason of reasons) {
    const { field, within } = reason;
    const group = NAMED.has(field)
      ? undefined
      : groups.find(([one]) => one.field === field && isPartOf(one.within, within));
    if (group === undefined) groups.push([reason]);
    else group.push(reason);
  }
  return groups;
}

/** Whether of two pieces of a text one has all of the other. */
function isPartOf(one: string | undefined, other: string | undefined): boolean {
  if (one === undefined || other === undefined) return false;
  const [a, b] = [one, other].map((text) => text.replace(/^… | …$/g, ''));
  return a !== undefined && b !== undefined && (a.includes(b) || b.includes(a));
}

/** Words of one text, which is shown once: “rubber band”; band, old, in “old rubber band”. */
function saySeveral(reasons: Reasons): string {
  const within = reasons
    .map((reason) => reason.within ?? '')
    .reduce((longest, text) => (text.length > longest.length ? text : longest));
  const phrase = reasons.map(({ found }) => found).join(' ');
  if (reasons.every(isAsTyped) && phrase === within) return `“${within}”`;
  const changes = new Set(reasons.map(sayChange));
  return `${[...changes].join(', ')}, in “${within}”`;
}

const NAMED: ReadonlySet<Reason['field']> = new Set(['creators', 'people', 'mentioned']);

const isAsTyped = ({ field, typed, found }: Reason): boolean =>
  foldWord(typed) === foldWord(found) || ['number', 'within', 'dates'].includes(field);

const sayChange = (reason: Reason): string =>
  isAsTyped(reason) ? reason.found : `${reason.typed} → ${reason.found}`;

function sayReason(reason: Reason): string {
  const { field, found, within } = reason;
  if (NAMED.has(field)) return within === undefined ? found : `${found} = ${within}`;
  const change = sayChange(reason);
  return within === undefined || field === 'dates' ? change : `${change}, in “${within}”`;
}
