/** What somebody of the Quill family would type, and what they are after: titles as examples/quill-ferry/list.csv has them. */
export interface AskedFor {
  typed: readonly string[];
  /** All of these are to be among the first three. */
  wanted: readonly string[];
  /** What makes it hard. */
  why: string;
}

const ask = (typed: string, why: string, ...wanted: string[]): AskedFor => ({
  typed: typed.split(' '),
  wanted,
  why,
});

const YES = 'Letter from Lois Barrow to Peter, the answer is yes';
const DEED = 'Deed of the landing and the ferry right, Abel Stroud to Thomas Quill';
const RIVER_PATH = 'Quilt, "The River Path"';
const NAMING = 'Tape of Dad naming the apple trees';
const FIRST_ACCOUNTS = 'Ferry account book, 1919';

/** Written from the list by hand, before there was anything to ask. */
export const QUESTIONS: readonly AskedFor[] = [
  ask('ferry bell', 'ferry is in every second title', 'The ferry bell'),
  ask('where is the box camera', 'asked as one asks a person', "Ada's box camera"),
  ask('last crossing film', 'many things of that day', 'Film, the last crossing'),
  ask('lefse', 'two recipes', 'Recipe for lefse', 'recipe for lefse, in English'),
  ask('apple buter', 'a letter left out', 'Recipe for apple butter, forty quarts'),
  ask('ledger 1919', 'another word for the kind, and a year', FIRST_ACCOUNTS),
  ask(
    'first letter from Ingrids brother',
    'a word that is nowhere near it',
    'Letter from Anders to his sister Ingrid, the first after she left home',
  ),
  ask('kjaere farmor', 'Norwegian without its letter', 'Letter from Kari, aged eight, to her grandmother'),
  ask('til tante ada', 'Norwegian on the back of a photograph', "Olav in his seaman's cap"),
  ask('froken', 'Norwegian without its letter', "Letter from a shipmate of Olav's to Miss Quill"),
  ask('jeg heter', 'Norwegian', "Ada's Norwegian exercise book"),
  ask('nygard wedding', 'the married name without its ring', 'Letter from Kari about her wedding'),
  ask(
    'Nygaard bryllup wedding 1938',
    'Danish spelling, and a word that is nowhere',
    'Letter from Kari about her wedding',
  ),
  ask('samuel speech', 'the list says Grandpa Sam', 'Speech made at the last crossing'),
  ask(
    'samuel quill uniform',
    'three prints',
    'Samuel in uniform',
    'Samuel in uniform, same sitting, smiling',
    'Samuel in uniform, a third print',
  ),
  ask('Quill, Samuel pay book', 'family name first', "Samuel's pay book"),
  ask('barrow lois yes', 'names the other way round', YES),
  ask('14 may 1952', 'a day in words', YES),
  ask('peter naming apples', 'the list says Dad', NAMING),
  ask('lois recipe notebook', 'the list says Mom', "Mom's recipe notebook"),
  ask('hester marsh sampler', 'a maiden name', 'sampler, Hester Marsh aged 10'),
  ask(
    'mabel tolliver wedding certificate',
    'the kind is a certificate of marriage',
    'Marriage certificate, Samuel and Mabel',
  ),
  ask(
    'account book 1927',
    'the same words for thirty years',
    'Ferry account book, 1927',
    'Ferry account book, 1927, fair copy',
  ),
  ask('diary 1918', 'the year stands in the date only', "Ada's diary, the year she was sixteen"),
  ask(
    'flood 1913',
    'two floods',
    'Letter from Thomas to Samuel during the flood, written from the barn roof',
  ),
  ask('flood diary', 'a kind and an occasion', "Ada's diary of the flood weeks"),
  ask('telegrm father died', 'a letter left out', 'Telegram to Edmund, FATHER DIED THIS MORNING'),
  ask('ternsund house', 'a place misspelt', 'Letter from Edmund to his mother: the house at Ternesund'),
  ask('abel strowd', 'a name misspelt', DEED),
  ask('thermometer', 'half of a title', "Dr. Averill's pill bottle and Ruth's thermometer"),
  ask('red square', 'stands in the description only', RIVER_PATH),
  ask('nitrate', 'stands in the note only', 'Reel of film in a rusty can, "Ferry & Orchard, 4th July"'),
  ask('mouldy letters', 'the list says mould', 'Packet of letters, could not be opened'),
  ask('"weather fine"', 'a phrase', 'Postcard to Ada, "weather fine, wish you were rowing"'),
  ask('ruths school reports', 'no apostrophe', 'School reports for Ruth'),
  ask(
    'heifer',
    'two photographs',
    'Ada with the heifer',
    'Photo of a heifer in the river with only the nose out',
  ),
  ask('christmas 1968', 'a feast and a year', 'Tape from Kari, songs and a Christmas greeting'),
  ask(
    'edmunds farm photos',
    'photographs, in the list',
    "Photographs from Ternesund, Edmund's farm and family",
  ),
  ask('orchad plan', 'a letter left out', 'Plan of the orchard, every tree with its name'),
  ask('ferri licens', 'both words misspelt', 'Ferry licence from the county'),
];
