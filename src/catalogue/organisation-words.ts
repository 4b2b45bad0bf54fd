/**
 * Words that only organisations have in their names, in small letters. Common practice. A word that is a common name of
 * people or houses (Abbey, Hall, Temple, Mills) stands nowhere here.
 */
const ORGANISATION_WORDS = [
  ...[
    'academy',
    'agency',
    'assn',
    'assoc',
    'association',
    'authority',
    'bakery',
    'band',
    'bank',
    'battalion',
  ],
  ...[
    'brewery',
    'brigade',
    'bros',
    'brothers',
    'bureau',
    'chapel',
    'choir',
    'chorus',
    'church',
    'circus',
    'club',
  ],
  ...[
    'co',
    'college',
    'commission',
    'committee',
    'company',
    'congregation',
    'cooperative',
    'co-operative',
    'corp',
  ],
  ...[
    'corporation',
    'council',
    'crew',
    'dairy',
    'department',
    'ensemble',
    'factory',
    'federation',
    'foundation',
  ],
  ...[
    'gmbh',
    'guild',
    'hospital',
    'hotel',
    'inc',
    'institute',
    'institution',
    'laundry',
    'league',
    'library',
  ],
  ...[
    'limited',
    'llc',
    'ltd',
    'ministry',
    'museum',
    'newspaper',
    'nursery',
    'office',
    'orchestra',
    'orphanage',
  ],
  ...[
    'partnership',
    'plc',
    'press',
    'quartet',
    'quintet',
    'railway',
    'railroad',
    'regiment',
    'school',
    'shipyard',
  ],
  ...[
    'soc',
    'society',
    'sons',
    'squad',
    'studio',
    'studios',
    'team',
    'theatre',
    'theater',
    'troupe',
    'trust',
  ],
  ...['union', 'university', 'verein'],
];
// Surnames too: with a title before it, or turned round, such a word is one.
const SURNAMES = 'band|bank|chapel|church|press|trust|team|hospital|club';

const ORGANISATION = new RegExp(`(?:^|[^\\p{L}])(?:${ORGANISATION_WORDS.join('|')})(?:$|[^\\p{L}])`, 'u');
const SURNAME = new RegExp(
  `^(?:(?:mr|mrs|miss|ms)\\.? (?:\\p{L}+\\.? ){0,2}(?:${SURNAMES})|(?:${SURNAMES}), \\p{L}+\\.?(?: \\p{L}+\\.?)?)$`,
  'u',
);

/** Whether a name is that of an organisation, as far as its words tell. @param name in small letters */
export const isOrganisation = (name: string): boolean => ORGANISATION.test(name) && !SURNAME.test(name);
