/** A kind of matter that is private as long as somebody whom it is about may be living. */
interface Matter {
  name: MatterName;
  /** How a finding begins: "On the health of people who may be living". */
  says: string;
  /** The least age at which somebody has such papers; for people whose birth nobody has noted. */
  age: number;
  /** Whether it is to be kept out altogether, rather than closed until a year. */
  keptOut?: true;
  advice: string;
  source: string;
}

export type MatterName = 'health' | 'school' | 'bank' | 'legal' | 'adoption' | 'identity' | 'password';

const HOW =
  'Say in the column “access” who may see it, and in “until” when that ends; the year named is a hundred years after the latest birth that can be, as is usual. The law differs from place to place: ask the receiving archive.';
const SOURCE =
  'common practice; a lifetime of 100 years, and 16 as the least age of an adult, as The National Archives (UK) reckon, from memory';

/** The matters; findings stand in this order. */
export const MATTERS: readonly Matter[] = [
  { name: 'health', says: 'Health', age: 0, advice: HOW, source: SOURCE },
  {
    name: 'adoption',
    says: 'Adoption or parentage',
    age: 0,
    advice: `Ask the person it is about before anybody else sees it, and before it stands in a list. ${HOW}`,
    source: SOURCE,
  },
  { name: 'identity', says: 'Papers that prove who somebody is', age: 0, advice: HOW, source: SOURCE },
  {
    name: 'password',
    says: 'Passwords or other keys to accounts',
    age: 0,
    keptOut: true,
    advice:
      'Keep it out of what is handed over, and the words themselves out of the list; where the account is still in use, change it.',
    source: 'common practice',
  },
  {
    name: 'legal',
    says: 'Courts, police, abuse, separations and wills',
    age: 16,
    advice: HOW,
    source: SOURCE,
  },
  { name: 'bank', says: 'Bank, tax and wages', age: 16, advice: HOW, source: SOURCE },
  { name: 'school', says: 'School records', age: 5, advice: HOW, source: SOURCE },
];
