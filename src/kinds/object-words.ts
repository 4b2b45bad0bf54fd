import { type WordForms, wordForms } from './plural.ts';

/** Everyday words for things that are no paper, with the kind that they are counted as. */
interface ObjectWords {
  /** The unit for one of them in `KINDS`. */
  kind: 'object' | 'textile';
  things: readonly WordForms[];
  source: string;
}

const row = (kind: ObjectWords['kind'], ...lines: readonly string[]): ObjectWords => ({
  kind,
  things: lines.flatMap((line) => line.split(', ').map(wordForms)),
  source: 'common practice',
});

/**
 * What families keep beside papers. These words are looked for in the column of kinds only, never in titles: in a title
 * a bell may be Hester Bell. A word that is a paper or a picture as well (plate, record, file) stands nowhere here.
 * How large such things usually are is told in `housing/object-words.ts`. A word stands here for one thing, with its
 * plural behind a stroke where that is irregular or the same (`knife/knives`, `scissors/scissors`). Extend it a row at a
 * time.
 */
export const OBJECT_WORDS: readonly ObjectWords[] = [
  row(
    'object',
    'musical instrument, instrument, violin, fiddle, viola, cello, banjo, mandolin, ukulele, guitar, zither, harp',
    'cornet, trumpet, bugle, trombone, tuba, euphonium, french horn, horn, clarinet, oboe, saxophone, flute, fife',
    'piccolo, recorder, harmonica, mouth organ, concertina, accordion, melodeon, bagpipe, drum, drumstick, tambourine',
    'cymbal, xylophone, metronome, tuning fork, violin bow, baton',
  ),
  row(
    'object',
    'trophy, cup, silver cup, loving cup, rosette, plaque, shield, pennant, medallion, prize cup',
  ),
  row(
    'object',
    'hammer, saw, plane, axe, hatchet, chisel, spanner, wrench, screwdriver, pliers/pliers, drill, awl, anvil, trowel',
    'spade, shovel, hoe, rake, scythe, sickle, pitchfork, shears/shears, pruning knife/pruning knives',
    'grafting knife/grafting knives, ruler, spirit level, plumb line, horseshoe, weight, scales/scales, iron',
    'flat iron, branding iron, printing block, loom, shuttle, spindle, spinning wheel, toolbox, tool box, nail, hook',
    'pulley, lock, padlock, key, oar, paddle, anchor, lantern, lamp, fishing rod, fishing reel, fish hook, net, trap',
    'saddle, bridle, stirrup, spur, whip, cowbell',
  ),
  row(
    'object',
    'ring, wedding ring, signet ring, brooch, necklace, bracelet, bangle, locket, pendant, earring, cufflink, tiepin',
    'tie pin, hatpin, watch chain, bead, rosary, cross, crucifix, jewelry/jewelry, piece of jewellery, watch',
    'pocket watch, wristwatch, clock, mantel clock, alarm clock, sundial, hourglass',
  ),
  row(
    'object',
    'crockery/crockery, china/china, porcelain/porcelain, pottery/pottery, glassware/glassware, silverware/silverware',
    'cutlery/cutlery, teapot, coffee pot, kettle, jug, pitcher, vase, bowl, dish, saucer, mug, tankard, goblet',
    'wine glass, tea set, dinner plate, candlestick, bottle, jar, butter churn, spoon, teaspoon, ladle, fork',
    'knife/knives, penknife/penknives, rolling pin, cake tin, pan, pot, urn, basket, bucket, figurine, ornament',
    'statue, statuette, carving, bust, sculpture, snow globe, music box, mirror, picture frame',
  ),
  row(
    'object',
    'doll, dolls house/dolls houses, doll’s house, teddy bear, teddy, rattle, puppet, marionette, marble, board game',
    'game, jigsaw, jigsaw puzzle, puzzle, dice/dice, chess set, chessman/chessmen, playing card, pack of cards',
    'spinning top, kite, ball, bat, racket, skate, sledge, hoop, rocking horse, toy train, train set, model boat',
    'model ship, model, building brick',
  ),
  row(
    'object',
    'shoe, baby shoe, bootee, bootie, boot, slipper, sandal, clog, spat, hat, top hat, bowler hat, cap, bonnet',
    'helmet, wig, belt, buckle, button, walking stick, cane, umbrella, parasol, fan, spectacles/spectacles',
    'eyeglasses/eyeglasses, glasses/glasses, lorgnette, monocle, binoculars/binoculars, telescope, magnifying glass',
    'bag, handbag, satchel, briefcase, rucksack, knapsack, haversack, purse, wallet, pouch, suitcase, trunk, hatbox',
    'hat box, gas mask, insignia/insignia/insignias, armband, dog tag',
  ),
  row(
    'object',
    'box, wooden box, tin, casket, chest, cigar box, jewellery box, jewelry box, sewing box, work box, snuffbox',
    'snuff box, pen, fountain pen, pencil, pencil case, inkwell, ink stand, seal, rubber stamp, slate, abacus',
    'slide rule, razor, comb, brush, hairbrush, scissors/scissors, thimble, needle case, pipe, ashtray, lighter',
    'cigarette case, whistle, compass, camera, box camera, projector, typewriter, sewing machine, gramophone',
    'phonograph, telephone, radio, wireless, globe, fossil, souvenir spoon, stone, shell, sea shell, feather',
    'pressed flower, antler, tooth/teeth, baby tooth/baby teeth, plait, braid, death mask, furniture/furniture, chair',
    'stool, desk, cradle, cot, flagpole, ship’s wheel',
  ),
  row(
    'object',
    'sextant, octant, microscope, spyglass, kaleidoscope, stethoscope, opera glasses/opera glasses',
    'field glasses/field glasses, piano, organ, jew’s harp, mouth harp, sewing kit, sewing basket, keyring, key ring',
    'tie clip, pin, hat pin, toy car, epaulette, paperweight, letter opener, paper knife/paper knives',
    'pocket knife/pocket knives, book end, bookend, letter box, letterbox, postbox, photo frame, photograph frame',
    'map case, record player, tape measure, measuring tape, card table, sewing table, slide projector, butter mould',
    'cake mould, cookie cutter, teacup, tea cup, tray, candle holder, horse brass, hip flask, flask, powder compact',
    'cigarette holder, corkscrew, nutcracker, weathervane, weather vane, banknote, shaving mug, shaving brush',
    'biscuit tin, tobacco tin, jam jar, christening mug, hair slide',
  ),
  row(
    'textile',
    'cushion, pillow, tea towel, tea cosy, bedcover, hooked rug, table runner, needlework/needlework, pyjamas/pyjamas',
    'gown, christening gown, christening robe, wedding dress, wedding gown, robe, coat, overcoat, jacket, blazer',
    'cloak, cape, suit, shirt, blouse, skirt, petticoat, corset, waistcoat, vest, nightgown, cardigan, jumper',
    'sweater, trousers/trousers, costume, garment, clothes/clothes, item of clothing, shawl, scarf/scarves/scarfs',
    'veil, glove, mitten, stocking, sock, collar, cuff, necktie, tie, bow tie, bib, ribbon, sash, doily, tablecloth',
    'napkin, towel, pillowcase, cushion cover, curtain, tapestry, banner, rug, carpet, blanket, bedspread, coverlet',
    'eiderdown, counterpane, patchwork/patchwork, crochet/crochet, knitting/knitting',
  ),
  // What the rules on dangerous things ask about; the test of the tables holds them together.
  row(
    'object',
    'ammunition/ammunition, ammo/ammo, cartridge, bullet, shell case, shell casing, artillery shell, shotgun shell',
    'mortar shell, live shell, brass shell, live round, trench art/trench art, grenade, hand grenade, bomb',
    'shrapnel/shrapnel, gunpowder/gunpowder, powder horn, powder flask, blasting cap, detonator, dynamite/dynamite',
    'flare, firework, firecracker, explosive, weapon, rifle, pistol, revolver, shotgun, musket, gun, air gun, firearm',
    'bayonet, sword, dagger, sabre, saber, gewehr/gewehre/gewehrs, pistole/pistolen/pistoles, fusil/fusils, medicine',
    'medication, pill, pill bottle, pill box, medicine bottle, medicine chest, tablet, ampoule, morphine/morphine',
    'laudanum/laudanum, opium/opium, insulin/insulin, syringe, hypodermic, first aid kit, first aid box, ointment',
    'iodine/iodine, quinine/quinine, chloroform/chloroform, ether/ether, smelling salts/smelling salts, cough syrup',
    'cough mixture, tonic, doctor’s bag, drug, medizin/medizin, medisin/medisin, medikament/medikamente, chemical',
    'poison, bottle of acid, arsenic/arsenic, cyanide/cyanide, strychnine/strychnine, acid, lye/lye',
    'caustic soda/caustic soda, ammonia/ammonia, turpentine/turpentine, petrol/petrol, gasoline/gasoline',
    'kerosene/kerosene, lamp oil, lighter fluid, solvent, weed killer, weedkiller, pesticide, insecticide, rat poison',
    'ddt/ddt, mothball, moth ball, naphthalene/naphthalene, formaldehyde/formaldehyde, formalin/formalin',
    'carbon tetrachloride/carbon tetrachloride, fire extinguisher, darkroom chemical, fixer, gas cylinder, paint tin',
    'paint can, tin of paint, box of matches, cigarette lighter, aerosol, battery, batterie/batterien',
    'batteri/batterier, flashlight, torch, electric torch, pocket torch, hearing aid, transistor radio, mobile phone',
    'cell phone, laptop, dictaphone, cassette recorder, cassette player, pocket calculator, calculator, talking toy',
    'radium/radium, uranium/uranium, luminous dial, luminous watch, luminous clock, luminous compass',
    'luminous wristwatch, luminous paint, mercury/mercury, quicksilver/quicksilver, thermometer, barometer',
    'blood pressure gauge, asbestos/asbestos, asbest/asbest, taxidermy/taxidermy, stuffed bird, stuffed animal head',
    'stuffed owl, stuffed pheasant, stuffed duck, stuffed hawk, stuffed heron, stuffed fox, stuffed badger',
    'stuffed stoat, stuffed otter, stuffed squirrel, stuffed fish/stuffed fish/stuffed fishes',
    'stuffed pike/stuffed pike/stuffed pikes, mounted bird, mounted head, mounted butterfly, hunting trophy',
    'bird under glass, lead soldier, tin soldier, toy soldier, lead toy, painted toy, lead paint, lead type/lead type',
    'lead weight, celluloid/celluloid',
  ),
];
