/**
 * How the elements of one version of EAD are told in the other, by the content models of the published schemas (EAD3
 * 1.1.1; EAD 2002 of 2021). Read from left to right and from right to left.
 */
export interface ConversionRow {
  ead2002: string;
  ead3: string;
  /** Attributes beside id, altrender and audience, which both have everywhere: EAD 2002 name, EAD3 name. */
  attributes: Readonly<Record<string, string>>;
  /** Which elements may stand in its text, by the names of sets below; undefined where it holds no text. */
  text?: Readonly<{ ead2002: TextSet; ead3: TextSet }>;
}

/** Sets of elements that may stand in a text; each holds those before it but for the wider ones of its version. */
export const TEXT_SETS = {
  none: [],
  /** m.phrase.bare of EAD 2002. */
  bare: ['emph', 'lb', 'ptr', 'extptr'],
  /** m.phrase.basic of EAD 2002, without what EAD3 has dropped. */
  basic2002: ['emph', 'lb', 'ptr', 'extptr', 'abbr', 'expan', 'ref', 'extref', 'title'],
  /** unittitle and running text of EAD 2002. */
  plus2002: [
    ...['emph', 'lb', 'ptr', 'extptr', 'abbr', 'expan', 'ref', 'extref', 'title', 'num', 'date'],
    ...[
      'corpname',
      'famname',
      'geogname',
      'name',
      'occupation',
      'persname',
      'subject',
      'genreform',
      'function',
    ],
  ],
  /** ref and extref of EAD 2002 hold no other link. */
  link2002: [
    ...['emph', 'lb', 'abbr', 'expan', 'title', 'num', 'date'],
    ...[
      'corpname',
      'famname',
      'geogname',
      'name',
      'occupation',
      'persname',
      'subject',
      'genreform',
      'function',
    ],
  ],
  /** m.mixed.basic.elements of EAD3. */
  basic3: ['abbr', 'emph', 'expan', 'lb', 'ptr', 'ref'],
  /** m.mixed.basic.plus.access of EAD3. */
  plus3: [
    ...['abbr', 'emph', 'expan', 'lb', 'ptr', 'ref', 'date', 'num', 'quote', 'title'],
    ...[
      'corpname',
      'famname',
      'geogname',
      'name',
      'occupation',
      'persname',
      'subject',
      'genreform',
      'function',
    ],
  ],
  /** ref of EAD3. */
  link3: [
    ...['abbr', 'emph', 'expan', 'lb', 'ptr', 'quote', 'num', 'date', 'title'],
    ...[
      'corpname',
      'famname',
      'geogname',
      'name',
      'occupation',
      'persname',
      'subject',
      'genreform',
      'function',
    ],
  ],
} as const satisfies Readonly<Record<string, readonly string[]>>;

type TextSet = keyof typeof TEXT_SETS;

const analog = { encodinganalog: 'encodinganalog' };
const kind = { type: 'localtype' };
const label = { label: 'label' };
const inBare = { ead2002: 'bare', ead3: 'basic3' } as const;
const inBasic = { ead2002: 'basic2002', ead3: 'basic3' } as const;
const inPlus = { ead2002: 'plus2002', ead3: 'plus3' } as const;

const same = (names: string, row: Omit<ConversionRow, 'ead2002' | 'ead3'>): ConversionRow[] =>
  names.split(' ').map((name) => ({ ead2002: name, ead3: name, ...row }));

const dates = { ...analog, certainty: 'certainty', era: 'era', calendar: 'calendar', normal: 'normal' };
const register = {
  ...analog,
  source: 'source',
  rules: 'rules',
  authfilenumber: 'identifier',
  normal: 'normal',
};
const link = {
  ...{ 'xlink:href': 'href', 'xlink:title': 'linktitle', 'xlink:role': 'linkrole', 'xlink:show': 'show' },
  ...{ 'xlink:actuate': 'actuate', target: 'target', xpointer: 'xpointer' },
};

export const CONVERSIONS: readonly ConversionRow[] = [
  // In a text.
  ...same('emph', { attributes: { render: 'render' }, text: inBasic }),
  ...same('lb', { attributes: {} }),
  ...same('abbr', { attributes: { expan: 'expan' }, text: { ead2002: 'none', ead3: 'none' } }),
  ...same('expan', { attributes: { abbr: 'abbr' }, text: { ead2002: 'none', ead3: 'none' } }),
  ...same('num', { attributes: { ...kind, ...analog }, text: inBare }),
  ...same('date', { attributes: { ...kind, ...dates }, text: inBare }),
  { ead2002: 'extref', ead3: 'ref', attributes: link, text: { ead2002: 'link2002', ead3: 'link3' } },
  { ead2002: 'ref', ead3: 'ref', attributes: link, text: { ead2002: 'link2002', ead3: 'link3' } },
  { ead2002: 'extptr', ead3: 'ptr', attributes: link },
  { ead2002: 'ptr', ead3: 'ptr', attributes: link },
  // Names and terms; in EAD3 their text stands in parts.
  ...same('persname famname corpname name geogname', {
    attributes: { ...register, role: 'relator' },
    text: inBare,
  }),
  ...same('subject occupation function', { attributes: register, text: inBare }),
  ...same('genreform', { attributes: { ...register, ...kind }, text: inBare }),
  ...same('title', { attributes: { ...register, ...kind, render: 'render' }, text: inBare }),
  // In a did.
  ...same('unittitle', { attributes: { ...kind, ...label, ...analog }, text: inPlus }),
  ...same('unitdate', {
    attributes: { ...dates, ...label, type: 'unitdatetype', datechar: 'datechar' },
    text: inBasic,
  }),
  ...same('unitid', {
    attributes: {
      ...{ ...kind, ...label, ...analog, identifier: 'identifier' },
      ...{ countrycode: 'countrycode', repositorycode: 'repositorycode' },
    },
    text: inBasic,
  }),
  ...same('abstract', {
    attributes: { ...kind, ...label, ...analog },
    text: { ead2002: 'basic2002', ead3: 'plus3' },
  }),
  ...same('container physloc', {
    attributes: { ...kind, ...label, ...analog, parent: 'parent' },
    text: inBasic,
  }),
  ...same('physdesc', { attributes: { ...label, ...analog }, text: inBasic }),
  ...same('origination', { attributes: { ...label, ...analog } }),
  ...same('did', { attributes: analog }),
  // Beside it.
  ...same(
    'bioghist custodhist acqinfo scopecontent appraisal accruals arrangement otherfindaid prefercite bibliography fileplan controlaccess',
    { attributes: analog },
  ),
  ...same(
    'accessrestrict userestrict phystech originalsloc altformavail relatedmaterial separatedmaterial processinfo odd',
    {
      attributes: { ...kind, ...analog },
    },
  ),
  ...same('head', { attributes: { althead: 'althead' }, text: inBare }),
  ...same('p item event', { attributes: {}, text: inPlus }),
  ...same('label', { attributes: {}, text: { ead2002: 'plus2002', ead3: 'basic3' } }),
  ...same('defitem listhead head01 head02', { attributes: {} }),
  ...same('chronlist', { attributes: analog }),
  ...same('blockquote', { attributes: {} }),
  { ead2002: 'list', ead3: 'list', attributes: { type: 'listtype', numeration: 'numeration' } },
  { ead2002: 'dsc', ead3: 'dsc', attributes: { ...analog, type: 'dsctype' } },
  ...same('c', { attributes: { ...analog, level: 'level', otherlevel: 'otherlevel' } }),
  ...same('archdesc', {
    attributes: {
      ...{ ...analog, ...kind, level: 'level', otherlevel: 'otherlevel' },
      relatedencoding: 'relatedencoding',
    },
  }),
  // In the control.
  ...same('titlestmt', { attributes: analog }),
  ...same('titleproper', { attributes: { ...kind, ...analog, render: 'render' }, text: inBare }),
  ...same('subtitle author sponsor', { attributes: analog, text: inBare }),
];

/** Values of an attribute that each version has its own words for: EAD 2002, EAD3. One that is not here is not told. */
export const VALUES: Readonly<Record<string, readonly (readonly [string, string])[]>> = {
  'list/@type': [
    ...([
      ['simple', 'unordered'],
      ['marked', 'unordered'],
      ['ordered', 'ordered'],
      ['deflist', 'deflist'],
    ] as const),
  ],
  'list/@numeration': [
    ...([
      ['arabic', 'decimal'],
      ['upperalpha', 'upper-alpha'],
      ['loweralpha', 'lower-alpha'],
    ] as const),
    ...([
      ['upperroman', 'upper-roman'],
      ['lowerroman', 'lower-roman'],
    ] as const),
  ],
  'unitdate/@type': [
    ['inclusive', 'inclusive'],
    ['bulk', 'bulk'],
  ],
  'dsc/@type': [
    ['combined', 'combined'],
    ['in-depth', 'in-depth'],
    ['analyticover', 'analyticover'],
  ],
  '@xlink:show': [
    ['new', 'new'],
    ['replace', 'replace'],
    ['embed', 'embed'],
    ['other', 'other'],
    ['none', 'none'],
  ],
  '@xlink:actuate': [
    ['onLoad', 'onload'],
    ['onRequest', 'onrequest'],
    ['other', 'other'],
    ['none', 'none'],
  ],
};
