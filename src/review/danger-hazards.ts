/** One kind of danger or decay: what is said of it, what to do, and on what that rests. */
export interface Hazard {
  name: HazardName;
  /** How a finding begins: "Mould or damp". */
  says: string;
  /** Why it matters, a sentence. */
  because: string;
  /** What the family is to do. */
  advice: string;
  /** The same for the archive to which the thing is offered, where it is not said in the same words. */
  toArchive?: string;
  source: string;
  /** Whether each thing is a finding of its own, since somebody must decide on it alone. */
  alone?: true;
  /** How it is called where the thing is not to be boxed before somebody has looked at it; left out where it may be. */
  notBoxed?: string;
}

export type HazardName =
  | 'ammunition'
  | 'weapons'
  | 'nitrate-film'
  | 'nitrate-negatives'
  | 'medicines'
  | 'chemicals'
  | 'arsenic'
  | 'radium'
  | 'mercury'
  | 'asbestos'
  | 'batteries'
  | 'taxidermy'
  | 'lead'
  | 'celluloid'
  | 'mould'
  | 'pests'
  | 'vinegar'
  | 'acetate-film'
  | 'glass'
  | 'brittle'
  | 'stuck'
  | 'rolled'
  | 'adhesive'
  | 'metal'
  | 'fasteners';

const P = 'common practice';
const M = 'from memory';

/** The hazards, the most urgent first; findings stand in this order. */
export const HAZARDS: readonly Hazard[] = [
  {
    name: 'ammunition',
    says: 'Ammunition or something like it',
    because: 'Even a souvenir that everybody takes for empty may not be.',
    advice:
      'Do not move, open, clean or box it. Call the police or the local authority on their ordinary line and let somebody who knows look at it.',
    toArchive:
      'Do not move, open, clean or box it before somebody whom the police or the local authority sends has looked at it.',
    source: P,
    alone: true,
    notBoxed: 'ammunition',
  },
  {
    name: 'weapons',
    says: 'A weapon',
    because: 'It may be loaded, and the law on keeping and giving away weapons differs from place to place.',
    advice:
      'Do not handle or box it. Ask the police or the local authority; most archives do not take weapons.',
    toArchive:
      'Do not handle or box it. Please tell us whether you take weapons at all; if not, the police or the local authority decides what becomes of it.',
    source: P,
    alone: true,
    notBoxed: 'a weapon',
  },
  {
    name: 'nitrate-film',
    says: 'Film that is, or by its date may be, cellulose nitrate',
    because:
      'It was made into the early 1950s, burns fiercely, and may catch fire by itself when it decays or gets warm.',
    advice:
      'Do not open, run or box it, least of all a tin that is stuck or smells, and do not send it by post. Keep it cool and apart, out of the house, away from heat and flames, and ask the fire service or a conservator who may take it; local rules decide. Film 16 mm or 8 mm wide is safety film: note the width in the column “size”.',
    toArchive:
      'Do not open or run it, least of all a tin that is stuck or smells, and do not send it or have it sent by post. Keep it cool and apart, away from heat and flames. Please tell us before it is moved whether you may take it; the fire service knows the local rules, which decide.',
    source: 'NFPA 40; from memory for the years and the widths',
    notBoxed: 'film that is or may be nitrate',
  },
  {
    name: 'nitrate-negatives',
    says: 'Negatives that are, or by their date may be, cellulose nitrate',
    because:
      'Film negatives were made of it into the early 1950s; it burns fiercely and spoils what lies beside it.',
    advice:
      'Look for “safety” on the edge. Keep those without it apart from everything else, cool, out of the house, in paper and never in a tight tin. Do not open a tin that is stuck or smells, do not send them by post, and do not test by burning. Ask the fire service or a conservator; local rules decide.',
    toArchive:
      'Look for “safety” on the edge. Keep those without it apart from everything else, cool, in paper and never in a tight tin. Do not open a tin that is stuck or smells, do not send them or have them sent by post, and do not test by burning. Please tell us before they are moved whether you may take them; the fire service knows the local rules, which decide.',
    source: 'NFPA 40; from memory for the years',
    notBoxed: 'negatives that are or may be nitrate',
  },
  {
    name: 'medicines',
    says: 'Medicines, or what they were given with',
    because: 'Old medicines can be poison, and some are against the law to keep.',
    advice:
      'Do not open or box them. Take them to a pharmacist, or ask one; photograph the label for the family.',
    toArchive: 'Do not open or box them. Please tell us if you want them; if not, they go to a pharmacist.',
    source: P,
    alone: true,
    notBoxed: 'medicines',
  },
  {
    name: 'chemicals',
    says: 'Chemicals',
    because: 'They leak, burn or poison, and age makes some of them worse.',
    advice: 'Do not open, pour out or box them. Ask the local authority where to take them.',
    toArchive:
      'Do not open, pour out or box them. Please tell us if you want them; if not, they go where the local authority says.',
    source: P,
    alone: true,
    notBoxed: 'chemicals',
  },
  {
    name: 'arsenic',
    says: 'Paper or cloth coloured with arsenic',
    because: 'The green comes off on the hands, and is poison.',
    advice:
      'Touch it only with gloves, and wash your hands. Wrap it, keep it apart, do not rub or dust it, and ask a conservator.',
    source: M,
    notBoxed: 'arsenic',
  },
  {
    name: 'radium',
    says: 'Something that glows, perhaps with radium',
    because: 'Its paint stays radioactive for many hundred years, whether it still glows or not.',
    advice:
      'Do not open, scrape or wear it. Wrap it, keep it away from where people sit or sleep, and ask the local authority or the receiving archive.',
    toArchive:
      'Do not open, scrape or wear it. Keep it wrapped, away from where people work, and please tell us before it is moved whether you may take it; the local authority knows the rules.',
    source: M,
    alone: true,
    notBoxed: 'radium',
  },
  {
    name: 'mercury',
    says: 'Something that may hold mercury',
    because: 'Its vapour is poisonous, and a tube that breaks cannot be swept up.',
    advice: 'Keep it upright and whole, do not box it, and ask a pharmacist or the local authority.',
    source: P,
    alone: true,
    notBoxed: 'mercury',
  },
  {
    name: 'asbestos',
    says: 'Something that may hold asbestos',
    because: 'Its fibres harm the lungs when it is handled, brushed or torn.',
    advice: 'Do not handle or shake it. Put it into a bag, close it, and ask the local authority.',
    source: M,
    alone: true,
    notBoxed: 'asbestos',
  },
  {
    name: 'batteries',
    says: 'Batteries, or things that may have one in them',
    because: 'Batteries leak, and spoil what they lie with.',
    advice:
      'Take out what comes out easily, with gloves if it has leaked, and hand it in where batteries are collected; ask the local authority about any that is swollen.',
    source: P,
  },
  {
    name: 'taxidermy',
    says: 'Stuffed or mounted animals',
    because: 'Old ones were often treated with arsenic or other poison, and they draw insects.',
    advice: 'Touch them only with gloves, do not brush them, and ask a conservator.',
    source: M,
  },
  {
    name: 'lead',
    says: 'Things that may hold lead',
    because: 'Old paint and cast toys often do; it is poisonous, above all for children.',
    advice:
      'Keep them from children, wash your hands after handling, do not sand or scrape, and ask a conservator.',
    source: M,
  },
  {
    name: 'celluloid',
    says: 'Things of celluloid',
    because:
      'It is cellulose nitrate, as old film is: it burns fast, and in decay spoils what lies beside it.',
    advice: 'Keep it cool, aired and apart from papers and metal, and ask a conservator.',
    source: M,
  },
  {
    name: 'mould',
    says: 'Mould or damp',
    because: 'Live or dry, mould harms the lungs, and it spreads.',
    advice:
      'Keep it apart in paper, not in plastic, somewhere cool and dry; wear a mask, do not brush or wipe it indoors, and ask a conservator. Tell the receiving archive before it gets there.',
    toArchive:
      'Please tell us before it comes to you whether you take it, and how it is to be packed. Keep it apart in paper, not in plastic, somewhere cool and dry; wear a mask, do not brush or wipe it indoors, and ask your conservator.',
    source: P,
    notBoxed: 'mould',
  },
  {
    name: 'pests',
    says: 'Insects, mice or their traces',
    because: 'What is still alive moves on to the rest of the collection, and to other collections.',
    advice:
      'Put it into a closed bag apart from the rest, look again after two weeks, use no spray, and ask a conservator or the receiving archive.',
    toArchive:
      'Please tell us before it comes to you whether you take it, and how it is to be packed. Keep it in a closed bag apart from other collections, look again after two weeks, use no spray, and ask your conservator.',
    source: P,
    notBoxed: 'insects or mice',
  },
  {
    name: 'vinegar',
    says: 'Film or tape that smells of vinegar or buckles',
    because: 'Acetate that decays gives off acid, which spoils what lies beside it.',
    advice: 'Keep it apart, cool and aired, and ask a conservator or a film archive soon about copying it.',
    source: P,
    notBoxed: 'film or tape that decays',
  },
  {
    name: 'acetate-film',
    says: 'Film that by its date is likely to be acetate',
    because: 'It decays slowly, and smells of vinegar when it does.',
    advice:
      'Smell it once a year, keep it cool and dry, and if it has begun to smell take it out of the box and ask a film archive or a conservator.',
    source: 'common practice; from memory for the years',
  },
  {
    name: 'glass',
    says: 'Glass',
    because: 'It is heavy and breaks, and the picture lies on its surface.',
    advice:
      'Stand plates on their long edge with something stiff between them, never stack them, mark the box “glass”, and put broken pieces flat between boards without joining them; ask a conservator about pictures that lift off.',
    source: P,
  },
  {
    name: 'brittle',
    says: 'Brittle or crumbling',
    because: 'Every handling takes a piece off.',
    advice:
      'Do not bend, unfold or flatten it. Lay a paper in a folder of its own on something stiff, lift an object from below, and ask a conservator.',
    source: P,
  },
  {
    name: 'stuck',
    says: 'Stuck, sealed or shut',
    because: 'What is forced tears.',
    advice: 'Do not force it open or apart; leave it as it is, and ask a conservator.',
    source: P,
  },
  {
    name: 'rolled',
    says: 'Rolled',
    because: 'What has been rolled for years cracks when it is flattened dry.',
    advice:
      'Do not force it flat. Keep it rolled round a tube and wrapped, or ask a conservator to flatten it.',
    source: P,
  },
  {
    name: 'adhesive',
    says: 'Tape, glue, sticky pages or lamination',
    because: 'Adhesive stains and hardens, and pulling it off takes the surface with it.',
    advice: 'Leave it as it is; photograph the pages, put thin paper between them, and ask a conservator.',
    source: P,
  },
  {
    name: 'metal',
    says: 'Rust or metal on film, on glass or on a picture on metal',
    because: 'The picture is only a skin, and rubbing or prising takes it off.',
    advice: 'Leave it: slide, rub or prise nothing off. Keep it dry, and ask a conservator.',
    source: P,
  },
  {
    name: 'fasteners',
    says: 'Rust, clips, staples, pins or rubber bands',
    because: 'Rust stains and eats through paper and cloth, and rusty points hurt.',
    advice:
      'Slide off what comes off easily, with a bit of card beneath to save the paper; leave what resists, and ask a conservator.',
    source: P,
  },
];
