/** A kind of matter that is private as long as somebody whom it is about may be living. */
export interface Matter {
  name: MatterName;
  /** How a finding begins: "On the health of people who may be living". */
  says: string;
  /** The least age at which somebody has such papers; for people whose birth nobody has noted. */
  age: number;
  advice: string;
  source: string;
}

export type MatterName = 'health' | 'school' | 'bank' | 'legal' | 'adoption' | 'identity';

const HOW =
  'Say in the access column who may see it, and under "until" when that ends; the year named is a hundred years after the birth, as is usual. The law differs from place to place: ask the receiving archive.';
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
  { name: 'legal', says: 'Courts, police, separations and wills', age: 16, advice: HOW, source: SOURCE },
  { name: 'bank', says: 'Bank, tax and wages', age: 16, advice: HOW, source: SOURCE },
  { name: 'school', says: 'School records', age: 5, advice: HOW, source: SOURCE },
];
