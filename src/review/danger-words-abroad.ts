import type { DangerColumn, DangerWord } from './danger-words.ts';
import { listed } from './listed.ts';
import type { Material } from './material.ts';

// The usual words in German, French, Spanish, Italian, Dutch, Norwegian, Danish and Swedish, from memory. They are looked
// for in every list, so a word that is harmless in one of these languages or in English stands nowhere by itself: `Gift`
// (poison, a present, married), `mug`, `cartouche`, `sable`, `patron`, `granat` (a gem too), `poudre`.

const source = 'from memory';
const ALL: readonly DangerColumn[] = ['kind', 'title', 'description', 'condition', 'note'];
// How paper is said to be as well: "saures Papier", "odeur acide".
const NOT_STATE: readonly DangerColumn[] = ['kind', 'title', 'description', 'note'];
const THINGS: readonly Material[] = ['object', 'textile', 'unknown'];

const TOYS = listed('spielzeug, jouet, juguete, giocattolo, speelgoed, leketøy, legetøj, leksak, toy');

/** Words of other languages for dangerous things. What stands under `unless` is written small and without accents. */
export const THING_WORDS_ABROAD: readonly DangerWord[] = [
  {
    hazard: 'ammunition',
    words: listed(
      'munition, patrone, patronen, patronenhülse, patronenhülsen, granate, granaten, handgranate, handgranaten',
      'granathülse, granatsplitter, sprengstoff, sprengkapsel, schießpulver, schwarzpulver, pulverhorn, leuchtrakete, feuerwerkskörper',
      "munitions, balles de fusil, obus, douille d'obus, douilles d'obus, explosif, explosifs, détonateur, poudre à canon",
      'munición, municiones, cartucho, cartuchos, balas, granada de mano, pólvora, explosivos',
      'munizione, munizioni, cartuccia, cartucce, proiettile, proiettili, bossolo, bossoli, bomba a mano, polvere da sparo, esplosivo',
      'munitie, kogel, kogels, handgranaat, handgranaten, granaathuls, buskruit, springstof',
      'ammunisjon, patroner, patronhylse, patronhylster, håndgranat, håndgranater, granathylse, krutt, krutthorn',
      'granathylster, krudt, krudthorn, sprængstof, handgranat, krut, kruthorn, sprängämne',
    ),
    columns: ALL,
    of: THINGS,
    unless: listed(
      ...[
        'tinte, tinten, toner, drucker, encre, tinta, inchiostro, inkt, blekk, blæk, black, fuller, stilo, color',
      ],
      ...['works, factory, worker, workers, ministry, film, collar, collana'],
      ...TOYS,
    ),
    source,
  },
  {
    hazard: 'weapons',
    words: listed(
      'gewehr, gewehre, jagdgewehr, jagdgewehre, luftgewehr, karabiner, flinte, flinten, jagdflinte, schrotflinte',
      'pistole, pistolen, säbel, dolch, bajonett, schwert, waffe, waffen, schusswaffe, schußwaffe',
      'fusil, fusils, carabine, pistolet, pistolets, épée, poignard, baïonnette, arme à feu, armes à feu',
      'fusiles, escopeta, escopetas, carabina, pistola, pistolas, espada, daga, puñal, bayoneta, arma de fuego, armas de fuego',
      'fucile, fucili, doppietta, rivoltella, sciabola, spada, pugnale, baionetta, arma da fuoco, armi da fuoco',
      'geweer, geweren, jachtgeweer, pistool, sabel, dolk, zwaard, bajonet, vuurwapen, vuurwapens',
      'gevær, geværer, haglgevær, jaktgevær, hagle, sverd, våpen, jagtgevær, sværd, våben',
      'gevär, jaktgevär, bössa, hagelbössa, svärd, vapen',
    ),
    columns: ALL,
    of: THINGS,
    unless: listed('ss, colla, agua, acqua, eau, kleber, leim, pegamento', ...TOYS),
    source,
  },
  {
    hazard: 'medicines',
    words: listed(
      'arznei, arzneien, arzneimittel, medikament, tabletten, pillen, salbe, morphium, spritze, spritzen',
      'médicament, médicaments, comprimés, seringue, pommade, medicina, medicinas, medicamento, medicamentos, píldoras',
      'jeringa, jeringuilla, morfina, medicinali, pillole, siringa, medicijn, medicijnen, injectiespuit, morfine',
      'medisiner, tabletter, piller, morfin, medicin, mediciner',
    ),
    columns: ALL,
    of: THINGS,
    unless: listed(
      'feuerwehr, garten, diploma, titulo, facultad, facolta, laurea, libro, libros, ball, stein, holz',
    ),
    source,
  },
  {
    hazard: 'chemicals',
    words: listed(
      'chemikalien, giftflasche, giftflaschen, giftfläschchen, rattengift, mäusegift, giftig, giftige, giftiges, arsen, arsenik, zyankali',
      'strychnin, salzsäure, schwefelsäure, salpetersäure, blausäure, terpentin, benzin, brennspiritus, ammoniak, lauge, unkrautvernichter',
      'produits chimiques, acide sulfurique, térébenthine, mort aux rats, ammoniaque, cyanure, soude caustique, désherbant',
      'productos químicos, veneno, arsénico, ácido sulfúrico, trementina, gasolina, amoníaco, matarratas, cianuro, sosa cáustica',
      'prodotti chimici, veleno, arsenico, acido solforico, benzina, ammoniaca, soda caustica, topicida',
      'chemicaliën, vergif, rattengif, arseen, arsenicum, zwavelzuur, zoutzuur, salpeterzuur, terpentijn, benzine',
      'kjemikalier, rottegift, arsenikk, svovelsyre, saltsyre, salpetersyre, bensin, salmiakk',
      'kemikalier, svovlsyre, ukrudtsmiddel, råttgift, giftigt, svavelsyra',
    ),
    columns: ALL,
    of: THINGS,
    unless: listed('frei, fri, vrij, pflanze, planta, pianta, efeu', ...TOYS),
    source,
  },
  {
    hazard: 'chemicals',
    words: listed('säure, acide, ácido, acido, syre, syra'),
    columns: NOT_STATE,
    of: THINGS,
    unless: listed(
      'frei, fri, libre, papier, papel, carta, papir, papper, pappe, karton, gurken, drops, geschmack, geruch, odeur, olor, odore, lukt, lugt',
    ),
    source,
  },
  {
    hazard: 'arsenic',
    words: listed(
      'schweinfurter grün, arsengrün, arsenhaltig, vert de schweinfurt, vert de scheele, verde de scheele',
      'verde di scheele, schweinfurter groen, arseengroen, schweinfurtergrønt, schweinfurtergrönt, arsenikgrønt, arsenikgrönt',
    ),
    columns: ['title', 'description', 'condition', 'note'],
    source,
  },
  {
    hazard: 'radium',
    words: listed(
      'leuchtzifferblatt, leuchtzifferblätter, leuchtziffern, leuchtuhr, radiumuhr, radiumfarbe, uran, uranglas, cadran lumineux',
      'esfera luminosa, quadrante luminoso, lichtgevende wijzerplaat, selvlysende, självlysande, uranio',
    ),
    columns: ALL,
    of: THINGS,
    unless: listed('stjerner, stjärnor, stjarnor, klistremerke, klistermarke'),
    source,
  },
  {
    hazard: 'mercury',
    words: listed(
      'quecksilber, mercure, mercurio, kwikzilver, kwikthermometer, kvikksølv, kviksølv, kvicksilver',
      'thermomètre, termómetro, termometro, termometer, baromètre, barómetro, barometro',
    ),
    columns: ALL,
    of: THINGS,
    unless: listed(
      'dieu, dios, dio, planete, planeta, pianeta, statue, statua, digital, digitale, aneroid, france',
    ),
    source,
  },
  {
    hazard: 'asbestos',
    words: listed(
      'amiante, asbesto, amianto, gasmaske, gasmasken, masque à gaz, máscara de gas, máscara antigás',
      'maschera antigas, gasmasker, gassmaske, gasmask',
    ),
    columns: ALL,
    of: THINGS,
    source,
  },
  {
    hazard: 'batteries',
    words: listed('batería, baterías, batteria, batterij, batterijen'),
    columns: ALL,
    of: [...THINGS, 'sound'],
    unless: listed('artilleria, artiglieria, artillerie, musica, tambor, rock, cocina, cucina'),
    source,
  },
  {
    hazard: 'taxidermy',
    words: listed(
      'ausgestopft, ausgestopfte, ausgestopfter, ausgestopftes, tierpräparat, tierpräparate, empaillé, empaillée, empaillés, disecado, disecada',
      'imbalsamato, imbalsamata, opgezette vogel, opgezette dieren, utstoppet, udstoppet, uppstoppad, uppstoppade',
    ),
    columns: ALL,
    of: THINGS,
    unless: listed('puppe, bar, teddy, kissen, bamse, dukke, docka, flor, flores', ...TOYS),
    source,
  },
  {
    hazard: 'lead',
    words: listed(
      'bleisoldat, bleisoldaten, zinnsoldat, zinnsoldaten, bleifarbe, soldat de plomb, soldats de plomb, soldado de plomo, soldados de plomo',
      'soldatino di piombo, soldatini di piombo, tinnen soldaatje, tinnen soldaatjes, loden soldaatjes, tinnsoldat, tinnsoldater, tinsoldat',
      'tinsoldater, tennsoldat, tennsoldater',
    ),
    columns: ALL,
    of: THINGS,
    source,
  },
  {
    hazard: 'celluloid',
    words: ['zelluloid', 'celuloide', 'celluloide', 'selluloid'],
    columns: ALL,
    of: THINGS,
    source,
  },
];
