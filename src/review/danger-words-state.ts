import type { DangerColumn, DangerWord } from './danger-words.ts';
import { listed } from './listed.ts';
import type { Material } from './material.ts';

const P = 'common practice';

// What somebody says of the state of a thing. Of papers, a description tells what they say; it counts only of the rest.
const STATE: readonly DangerColumn[] = ['condition', 'note', 'size', 'description'];
// Adjectives that can stand in a title too: "packet of mouldy letters".
const SAID: readonly DangerColumn[] = [...STATE, 'title'];
const OF_FILM: readonly Material[] = ['film', 'unknown'];
// All that is, or holds, photographs; papers only tell of nitrate.
const NO_PAPER: readonly Material[] = ['film', 'picture', 'plate', 'object', 'unknown'];
const OF_PAPER: readonly Material[] = ['paper', 'picture', 'unknown'];
const OF_PLATES: readonly Material[] = ['film', 'plate'];

const OTHER_NITRATES = listed(
  'silver, potassium, sodium, ammonium, barium, lead, amyl, soda, lime, fertiliser, fertilizer, chile, chilean, works, mine, mines, company, trade',
);

/** Words on decay. Extend them a row at a time; the order does not matter. */
export const STATE_WORDS: readonly DangerWord[] = [
  {
    hazard: 'mould',
    words: listed('mould, moulds, mold, molds, mildew, white growth, fuzzy growth, fungus'),
    columns: STATE,
    unless: listed('jelly, butter, cake, candle, leaf, plaster, bullet, proof, course'),
    source: P,
  },
  {
    hazard: 'mould',
    words: listed('mouldy, moldy, mildewed, mold stained, mould stained'),
    columns: SAID,
    source: P,
  },
  {
    hazard: 'mould',
    words: listed('black spots, black spotted, furry spots'),
    columns: SAID,
    unless: listed(
      'dog, dogs, cow, cows, calf, heifer, horse, pony, cat, kitten, pig, hen, dress, tie, butterfly, white',
    ),
    source: P,
  },
  { hazard: 'mould', words: ['damp', 'musty', 'wet through'], columns: ['condition', 'note'], source: P },
  {
    hazard: 'pests',
    words: listed(
      'silverfish, woodworm, woodworms, wormholes, worm holes, worm eaten, moth, moths, moth eaten',
      'moth holes, carpet beetle, carpet beetles, beetle, beetles, insects, insect holes, insect damage, mouse chewed, mouse eaten, frass',
      'termites, booklice, cockroaches, mice, mouse damage, mouse droppings, mouse nest',
      'rat droppings, rodents, droppings, gnawed, nibbled, larvae',
    ),
    columns: ['condition', 'note', 'description'],
    unless: listed('collection, pinned, drawing, drawings'),
    source: P,
  },
  { hazard: 'pests', words: ['moth eaten', 'worm eaten'], columns: ['title'], source: P },
  {
    hazard: 'brittle',
    words: listed(
      'brittle, crumbling, crumbles, crumbly, flaking, falling apart, falls apart',
      'falling to pieces, red rot, very fragile, coming apart, splitting, picture lifting',
      'emulsion lifting, lifting off',
    ),
    columns: ['condition', 'note', 'description'],
    source: P,
  },
  {
    hazard: 'rolled',
    words: listed('rolled, rolled up, rolled tight, tightly rolled, on rollers, in a roll, in a tube'),
    columns: STATE,
    of: OF_PAPER,
    unless: listed('gold, oats, steel, sleeves, over, down, away, out'),
    source: P,
  },
  {
    hazard: 'rolled',
    words: listed('rolled in tube, rolled in a tube, rolled up in a tube, kept in a tube, rolled and tied'),
    columns: SAID,
    of: OF_PAPER,
    ofItself: true,
    source: P,
  },
  {
    hazard: 'stuck',
    words: listed(
      'stuck fast, stuck to, stuck shut, in a block, blocked together, sealed at the back, nailed and sealed',
      'sealed frame, frame is sealed, will not come off, will not unroll',
    ),
    columns: STATE,
    source: P,
  },
  {
    hazard: 'stuck',
    words: listed('stuck together, will not open, could not be opened, cannot be opened'),
    columns: SAID,
    source: P,
  },
  {
    hazard: 'adhesive',
    words: listed(
      'sticky tape, adhesive tape, sellotape, scotch tape, taped, mended with tape, masking tape',
      'parcel tape, glue, glued, pasted, flour paste, rubber cement, laminated',
    ),
    columns: STATE,
    of: ['paper', 'picture', 'plate'],
    unless: ['plywood'],
    source: P,
  },
  {
    hazard: 'adhesive',
    words: listed(
      'self stick, self adhesive, sticky pages, sticky album, magnetic album, magnetic pages',
      'sticky leaves',
    ),
    columns: SAID,
    ofItself: true,
    source: P,
  },
  {
    hazard: 'adhesive',
    words: ['sticky'],
    columns: SAID,
    of: ['paper', 'picture', 'plate'],
    unless: listed(
      'toffee, pudding, bun, buns, rice, jam, cake, wicket, fingers, hands, end, mud, situation',
    ),
    source: P,
  },
  {
    hazard: 'fasteners',
    words: listed(
      'rust, rusty, rusted, rusting, staple, staples, stapled, paper clip, paper clips, pin, pins',
      'pinned, rubber band, rubber bands, elastic bands, spike, corroded',
    ),
    columns: ['condition', 'note'],
    of: ['paper', 'picture', 'textile', 'unknown'],
    unless: listed('colour, color, coloured, colored, red, holes'),
    source: P,
  },
  {
    hazard: 'metal',
    words: listed(
      'rust, rusty, rusted, rusting, corroded, corrosion, staple, staples, stapled, paper clip, paper clips, pin, pins',
    ),
    columns: ['condition', 'note'],
    of: OF_PLATES,
    unless: listed('colour, color, coloured, colored, red, holes'),
    source: P,
  },
  {
    hazard: 'vinegar',
    words: listed('vinegar, vinegary, vinegar syndrome, acetic, essig, vinaigre, eddik'),
    columns: STATE,
    of: ['film', 'picture', 'sound', 'unknown'],
    unless: listed('recipe, pickle, pickles, cider, bottle, jug, cruet, works, factory'),
    source: P,
  },
  {
    hazard: 'vinegar',
    words: listed('warped, edge warped, buckled, channelled, channeled, shrunken, honeycombed'),
    columns: ['condition'],
    of: ['film'],
    source: P,
  },
  {
    hazard: 'nitrate-film',
    words: ['nitrate'],
    columns: ['kind', 'title', 'description'],
    of: NO_PAPER,
    unless: OTHER_NITRATES,
    source: 'NFPA 40',
  },
  {
    hazard: 'nitrate-film',
    words: ['nitrate'],
    columns: ['condition', 'note', 'size'],
    unless: OTHER_NITRATES,
    source: 'NFPA 40',
  },
  {
    hazard: 'nitrate-film',
    words: listed('nitrate film, nitrate films, nitrate base, nitrate stock, cellulose nitrate'),
    columns: [...SAID, 'kind'],
    ofItself: true,
    source: 'NFPA 40',
  },
  {
    hazard: 'nitrate-negatives',
    words: listed('nitrate negatives, nitrate negative, nitrate negs, nitrate neg'),
    columns: [...SAID, 'kind'],
    ofItself: true,
    source: 'NFPA 40',
  },
  {
    hazard: 'nitrate-film',
    words: listed('sticky and brown, brown powder, noxious smell'),
    columns: SAID,
    of: OF_FILM,
    source: 'NFPA 40',
  },
  {
    hazard: 'glass',
    words: listed(
      'broken glass, cracked glass, glass broken, glass cracked, glass is broken, glass is cracked',
      'shards, mind your fingers',
    ),
    columns: ['condition', 'note'],
    source: P,
  },
];
