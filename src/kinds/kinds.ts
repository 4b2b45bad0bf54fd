/** A kind of material: how it is called, and the broad group it belongs to when things are sorted by kind. */
export interface Kind {
  /** Unit for one of them. */
  one: string;
  /** Unit for several. */
  many: string;
  /** Title of the broad group. */
  group: BroadGroup;
  /** Other words for it in a list, in lower case. */
  also: readonly string[];
  source: string;
}

const P = 'common practice';

const row = (
  one: string,
  many: string,
  group: BroadGroup,
  also: readonly string[] = [],
  source = P,
): Kind => ({
  one,
  many,
  group,
  also,
  source,
});

/** The broad groups in the order in which they stand in a finding aid: papers first, then pictures, then what needs a shelf of its own. */
export const BROAD_GROUPS = [
  'Family history',
  'Correspondence',
  'Diaries and writings',
  'Certificates and legal papers',
  'Accounts and business papers',
  'School papers',
  'Military papers',
  'Medical papers',
  'Recipes',
  'Printed matter',
  'Maps and plans',
  'Music',
  'Drawings and prints',
  'Photographs',
  'Film and sound',
  'Digital files',
  'Textiles and objects',
] as const;

export type BroadGroup = (typeof BROAD_GROUPS)[number];

/** Kinds of material in family collections. Extend it a row at a time; the order does not matter. */
export const KINDS: readonly Kind[] = [
  row('family tree', 'family trees', 'Family history', ['genealogy', 'pedigree', 'tree']),
  row('family Bible', 'family Bibles', 'Family history', ['bible', 'bibles', 'bible record']),
  row('obituary', 'obituaries', 'Family history'),
  row('memoir', 'memoirs', 'Family history', ['recollections', 'reminiscences']),

  row('letter', 'letters', 'Correspondence', ['correspondence', 'mail']),
  row('postcard', 'postcards', 'Correspondence', ['post card', 'post cards', 'picture postcard']),
  row('greeting card', 'greeting cards', 'Correspondence', [
    'card',
    'cards',
    'christmas card',
    'christmas cards',
    'birthday card',
    'birthday cards',
    'greetings card',
  ]),
  row('telegram', 'telegrams', 'Correspondence', ['wire', 'cable']),
  row('envelope', 'envelopes', 'Correspondence'),
  row('invitation', 'invitations', 'Correspondence'),
  row('email', 'emails', 'Correspondence', ['e-mail', 'e-mails']),

  row('diary', 'diaries', 'Diaries and writings', ['journal', 'journals', 'logbook', 'log']),
  row('notebook', 'notebooks', 'Diaries and writings', ['note book', 'exercise book', 'exercise books']),
  row('manuscript', 'manuscripts', 'Diaries and writings', [
    'typescript',
    'poem',
    'poems',
    'story',
    'speech',
  ]),
  row('autograph album', 'autograph albums', 'Diaries and writings', ['guest book']),

  row('certificate', 'certificates', 'Certificates and legal papers', [
    'birth certificate',
    'marriage certificate',
    'death certificate',
    'baptism certificate',
    'diploma',
    'licence',
    'license',
  ]),
  row('deed', 'deeds', 'Certificates and legal papers', ['title deed']),
  row('will', 'wills', 'Certificates and legal papers', ['testament']),
  row('legal paper', 'legal papers', 'Certificates and legal papers', [
    'legal',
    'legal document',
    'legal documents',
    'contract',
    'contracts',
    'agreement',
    'lease',
    'court paper',
    'adoption paper',
    'adoption papers',
    'document',
    'documents',
  ]),
  row('ration book', 'ration books', 'Certificates and legal papers'),
  row('passport', 'passports', 'Certificates and legal papers', ['identity card', 'naturalisation paper']),

  row('account book', 'account books', 'Accounts and business papers', [
    'accounts',
    'ledger',
    'ledgers',
    'cash book',
    'account-book',
    'bank book',
    'bankbook',
    'passbook',
  ]),
  row('receipt', 'receipts', 'Accounts and business papers', ['bill', 'bills', 'invoice', 'invoices']),
  row('business paper', 'business papers', 'Accounts and business papers', ['business record', 'minutes']),
  row('ticket', 'tickets', 'Accounts and business papers'),

  row('school report', 'school reports', 'School papers', ['report card', 'report cards', 'school-report']),
  row('school paper', 'school papers', 'School papers', ['school work', 'homework', 'essay', 'copybook']),
  row('yearbook', 'yearbooks', 'School papers', ['year book']),

  row('military paper', 'military papers', 'Military papers', [
    'military',
    'service record',
    'service papers',
    'discharge',
    'military record',
  ]),
  row('medical paper', 'medical papers', 'Medical papers', [
    'medical record',
    'medical letter',
    'medical',
    'prescription',
  ]),

  row('recipe', 'recipes', 'Recipes', ['recipe card', 'recipe cards', 'receipt for cooking']),
  row('cookery book', 'cookery books', 'Recipes', ['cookbook', 'recipe book', 'cook book']),

  row('press cutting', 'press cuttings', 'Printed matter', [
    'cutting',
    'cuttings',
    'clipping',
    'clippings',
    'newspaper cutting',
    'newspaper clipping',
    'newspaper clippings',
    'press clipping',
  ]),
  row('newspaper', 'newspapers', 'Printed matter'),
  row('magazine', 'magazines', 'Printed matter', ['periodical', 'journal issue']),
  row('book', 'books', 'Printed matter'),
  row('pamphlet', 'pamphlets', 'Printed matter', ['brochure', 'leaflet', 'leaflets', 'booklet']),
  row('programme', 'programmes', 'Printed matter', ['program', 'programs', 'order of service']),
  row('poster', 'posters', 'Printed matter', ['handbill', 'broadside']),
  row('scrapbook', 'scrapbooks', 'Printed matter', ['scrap book']),
  row('timetable', 'timetables', 'Printed matter', ['time table', 'fare table']),

  row('map', 'maps', 'Maps and plans', ['chart', 'charts']),
  row('plan', 'plans', 'Maps and plans', [
    'drawing to scale',
    'blueprint',
    'blueprints',
    'survey',
    'technical drawing',
  ]),

  row('sheet of music', 'sheets of music', 'Music', ['sheet music', 'music', 'song book', 'hymnal', 'score']),

  row('drawing', 'drawings', 'Drawings and prints', ['sketch', 'sketches', "child's drawing"]),
  row('painting', 'paintings', 'Drawings and prints', ['watercolour', 'watercolor']),
  row('print', 'prints', 'Drawings and prints', ['engraving', 'lithograph', 'etching']),
  row('silhouette', 'silhouettes', 'Drawings and prints'),

  row('photograph', 'photographs', 'Photographs', [
    'photo',
    'photos',
    'picture',
    'pictures',
    'snapshot',
    'snapshots',
    'portrait',
    'loose photograph',
  ]),
  row('mounted photograph', 'mounted photographs', 'Photographs', [
    'cabinet card',
    'carte de visite',
    'mounted photo',
    'cartes de visite',
    'cabinet cards',
  ]),
  row('framed photograph', 'framed photographs', 'Photographs', ['framed photo']),
  row('photograph album', 'photograph albums', 'Photographs', [
    'album',
    'albums',
    'photo album',
    'photo albums',
  ]),
  row('negative', 'negatives', 'Photographs', ['film negative', 'film negatives']),
  row('glass plate', 'glass plates', 'Photographs', [
    'glass negative',
    'glass negatives',
    'glass plate negative',
    'lantern slide',
    'lantern slides',
  ]),
  row('slide', 'slides', 'Photographs', ['transparency', 'transparencies', 'colour slide']),
  row('tintype', 'tintypes', 'Photographs', ['ferrotype', 'ambrotype', 'daguerreotype']),

  row('film reel', 'film reels', 'Film and sound', [
    'film',
    'films',
    'reel',
    'reels',
    'home movie',
    'home movies',
    'cine film',
    'old film',
    '8mm film',
    '8 mm film',
    '16mm film',
    '16 mm film',
    'super 8 film',
    'super 8',
  ]),
  row('sound tape', 'sound tapes', 'Film and sound', [
    'tape',
    'tapes',
    'cassette',
    'cassettes',
    'audio cassette',
    'reel-to-reel tape',
    'sound recording',
    'recording',
  ]),
  row('video tape', 'video tapes', 'Film and sound', ['video', 'videos', 'videocassette', 'video cassette']),
  row('gramophone record', 'gramophone records', 'Film and sound', [
    'record',
    'records',
    'phonograph record',
    'vinyl',
    'disc',
  ]),

  row('digital file', 'digital files', 'Digital files', [
    'file',
    'files',
    'computer file',
    'disk',
    'memory stick',
  ]),

  row('quilt', 'quilts', 'Textiles and objects'),
  row('textile', 'textiles', 'Textiles and objects', [
    'cloth',
    'dress',
    'clothing',
    'lace',
    'sampler',
    'flag',
    'apron',
    'handkerchief',
    'uniform',
    'embroidery',
  ]),
  row('medal', 'medals', 'Textiles and objects', ['badge', 'badges']),
  row('object', 'objects', 'Textiles and objects', [
    'thing',
    'keepsake',
    'tool',
    'tools',
    'artefact',
    'artifact',
    'souvenir',
    'toy',
    'toys',
    'jewellery',
    'coin',
    'coins',
    'token',
    'bell',
  ]),
  row('lock of hair', 'locks of hair', 'Textiles and objects', ['hair']),
];
