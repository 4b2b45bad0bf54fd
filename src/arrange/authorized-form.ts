import type { Agent } from '../catalogue/agent.ts';
import { displayDate } from '../dates/index.ts';

type NameParts = NonNullable<Agent['nameParts']>;

const PARTICLES = 'van|von|de|der|den|del|di|du|la|le|ter|zu';
const LAST_WORD = new RegExp(`^(\\S.*?) ((?:(?:${PARTICLES}) )*)(\\p{Lu}\\S*)$`, 'u');
const SUFFIX = /,? ((?:jr|sr|jun|sen)\.?|[IVX]{2,4})$/iu;
/** Common practice: who is called so is known by the given name alone, and no family name follows. */
const KIN =
  /^(?:aunt|auntie|uncle|gran|granny|grandma|grandpa|grandmother|grandfather|mother|father|mom|mum|dad|cousin|sister|brother)\b/i;

/**
 * A person's name taken apart for a heading: family name first (RDA 9.2.2.4; from memory). A name that holds a comma is
 * in that order already; one that is not clearly a given and a family name stays whole.
 */
export function nameParts(name: string): NameParts {
  const [, surname, forename] = /^([^,]+), ([^,]+)$/.exec(name) ?? [];
  if (surname !== undefined && forename !== undefined) return parts(surname, forename);
  const plain = name.replace(/\s+/g, ' ');
  const suffix = SUFFIX.exec(plain)?.[1];
  const bare = suffix === undefined ? plain : plain.replace(SUFFIX, '');
  const [, given, particle = '', family] =
    KIN.test(bare) || bare.length > 200 ? [] : (LAST_WORD.exec(bare) ?? []);
  if (given === undefined || family === undefined) return [{ type: 'other', text: name }];
  return parts(family, `${given}${particle === '' ? '' : ` ${particle.trim()}`}`, suffix);
}

function parts(surname: string, forename: string, suffix?: string): NameParts {
  return [
    { type: 'surname', text: surname },
    { type: 'forename', text: forename },
    ...(suffix === undefined ? [] : [{ type: 'other' as const, text: suffix }]),
  ];
}

/** The heading for a name: its parts, then the years that tell namesakes apart (RDA 9.3; from memory). */
export function authorizedForm(
  named: NameParts,
  birth: string | undefined,
  death: string | undefined,
): string {
  const name = named.map(({ text }) => text).join(', ');
  const years = [birth, death].map(yearOf);
  return years.some((year) => year !== '') ? `${name}, ${years.join('-')}` : name;
}

/** A year as a heading has it; one that is not certain is said to be so, and what is no year is told as it is. */
function yearOf(edtf: string | undefined): string {
  if (edtf === undefined) return '';
  const [, year, mark] = /^(\d{4})(?:-\d\d){0,2}([~?%]?)$/.exec(edtf) ?? [];
  if (year === undefined) return displayDate(edtf);
  return mark === '' ? year : `${mark === '?' ? 'probably' : 'approximately'} ${year}`;
}
