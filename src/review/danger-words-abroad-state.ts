import type { DangerColumn, DangerWord } from './danger-words.ts';
import { listed } from './listed.ts';

// As in danger-words-abroad.ts: what is harmless in another of these languages stands nowhere by itself, as Danish `mug`.

const source = 'from memory';
const CONDITION: readonly DangerColumn[] = ['condition', 'note'];
const STATE: readonly DangerColumn[] = ['condition', 'note', 'size', 'description'];
const SAID: readonly DangerColumn[] = [...STATE, 'title'];

// "Nessuna muffa": what denies them and stands in no rule on denials.
const NONE = listed('aucun, aucune, nessun, nessuna, ningun, ninguna, inget, intet, frei, fri, vrij, libre');
// A grey or white horse bears the name of the mould.
const HORSES = listed(
  'pferd, pferde, reiter, fohlen, stute, hengst, pony, reitet, paard, paarden, hest, heste, hester, hast',
);

/** Words of other languages on decay. What stands under `unless` is written small and without accents. */
export const STATE_WORDS_ABROAD: readonly DangerWord[] = [
  {
    hazard: 'mould',
    words: listed(
      'schimmel, schimmelbefall, schimmelfleck, schimmelflecken, moisi, moisissure, moisissures, moho, muffa, muggsopp',
      'mugplet, mugpletter, skimmel, mögel, mögelfläckar',
    ),
    columns: STATE,
    unless: [...NONE, ...HORSES],
    source,
  },
  // Swedish `mugg` is also a cup.
  { hazard: 'mould', words: ['mugg', 'muggen'], columns: ['condition'], unless: NONE, source },
  {
    hazard: 'mould',
    words: listed(
      'schimmelig, schimmelige, schimmeliger, schimmeliges, schimmlig, verschimmelt, verschimmelte, moisie, moisis, moisies, mohoso, mohosa',
      'mohosos, mohosas, enmohecido, enmohecida, ammuffito, ammuffita, ammuffiti, ammuffite, beschimmeld, beschimmelde',
      'muggent, muggete, muggne, skimlet, jordslået, möglig, mögligt, mögliga',
    ),
    columns: SAID,
    unless: NONE,
    source,
  },
  {
    hazard: 'mould',
    words: listed(
      'feucht, muffig, modrig, moderig, humide, humidité, húmedo, húmeda, humedad, umido, umida, umidità',
      'vochtig, muf, fuktig, fuktskadet, fuktskadad, fugtig, fugtskadet',
    ),
    columns: CONDITION,
    unless: NONE,
    source,
  },
  {
    hazard: 'pests',
    words: listed(
      'silberfischchen, holzwurm, wurmstichig, mottenfraß, mottenlöcher, motten, mäusefraß, mäusekot, ungeziefer',
      "poissons d'argent, vermoulu, vermoulue, mité, mitée, crottes de souris, rongé par les souris, pececillos de plata, polilla, polillas, carcoma",
      'excrementos de ratón, tarme, tarlo, tarli, tarlato, tarlata, escrementi di topo, zilvervisjes, houtworm, mottengaten, muizenvraat',
      'muizenkeutels, sølvkre, sølvfisk, skjeggkre, møll, møllspist, musespist, musemøkk, trebille, mølædt, møl, borebiller, museskidt',
      'silverfisk, malätet, malätna, malhål, trämask, råttspillning, musspillning',
    ),
    columns: ['condition', 'note', 'description'],
    unless: NONE,
    source,
  },
  {
    hazard: 'vinegar',
    words: listed('azijn, vinagre, aceto, eddike, ättika'),
    columns: STATE,
    of: ['film', 'picture', 'sound', 'unknown'],
    unless: listed('rezept, receta, ricetta, recept, flasche, botella, bottiglia, fles, flaske, flaska'),
    source,
  },
  {
    hazard: 'nitrate-film',
    words: listed(
      'nitrofilm, nitrofilme, nitratfilm, nitratfilme, nitraatfilm, zelluloidfilm, zelluloidfilme, celluloidfilm',
      'nitrozellulose, cellulosenitrat, zellulosenitrat, nitrat de cellulose, nitrato de celulosa, nitrato di cellulosa, cellulosenitraat',
      'film flamme, pellicola infiammabile, película inflamable',
    ),
    columns: [...SAID, 'kind'],
    ofItself: true,
    source,
  },
  {
    hazard: 'nitrate-film',
    words: listed('nitrat, nitrato, nitraat'),
    columns: ['condition', 'note', 'size'],
    unless: listed(
      'plata, argento, zilver, silber, sølv, silver, sodio, potasio, potassio, chile, cile, natrium, kalium, argent',
    ),
    source,
  },
  {
    hazard: 'nitrate-negatives',
    words: listed(
      'nitratnegativ, nitratnegative, nitratnegativer, nitronegative, nitraatnegatief, nitraatnegatieven',
    ),
    columns: [...SAID, 'kind'],
    ofItself: true,
    source,
  },
];
