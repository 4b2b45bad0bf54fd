/** Everyday words for things that are no paper, with the kind that they are counted as. */
interface ObjectWords {
  /** The unit for one of them in `KINDS`. */
  kind: 'object' | 'textile';
  /** For one of them, in small letters; several are understood too. Where the plural is irregular, it stands here. */
  words: readonly string[];
  source: string;
}

const row = (kind: ObjectWords['kind'], ...lines: readonly string[]): ObjectWords => ({
  kind,
  words: lines.flatMap((line) => line.split(', ')),
  source: 'common practice',
});

/**
 * What families keep beside papers. These words are looked for in the column of kinds only, never in titles: in a title
 * a bell may be Hester Bell. A word that is a paper or a picture as well (plate, record, file) stands nowhere here.
 * How large such things usually are is told in `housing/object-words.ts`. Extend it a row at a time.
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
    'hammer, saw, plane, axe, hatchet, chisel, spanner, wrench, screwdriver, pliers, drill, awl, anvil, trowel, spade',
    'shovel, hoe, rake, scythe, sickle, pitchfork, shears, pruning knife, grafting knife, ruler, spirit level, plumb line',
    'horseshoe, weight, scales, iron, flat iron, branding iron, printing block, loom, shuttle, spindle',
    'spinning wheel, toolbox, tool box, nail, hook, pulley, lock, padlock, key, oar, paddle, anchor, lantern, lamp',
    'fishing rod, fishing reel, fish hook, net, trap, saddle, bridle, stirrup, spur, whip, cowbell',
  ),
  row(
    'object',
    'ring, wedding ring, signet ring, brooch, necklace, bracelet, bangle, locket, pendant, earring, earrings, cufflink',
    'cufflinks, tiepin, tie pin, hatpin, watch chain, bead, beads, rosary, cross, crucifix, jewelry, piece of jewellery',
    'watch, pocket watch, wristwatch, clock, mantel clock, alarm clock, sundial, hourglass',
  ),
  row(
    'object',
    'crockery, china, porcelain, pottery, glassware, silverware, cutlery, teapot, coffee pot, kettle, jug, pitcher, vase',
    'bowl, dish, saucer, mug, tankard, goblet, wine glass, tea set, dinner plate, candlestick, bottle, jar, butter churn',
    'spoon, teaspoon, ladle, fork, knife, knives, penknife, penknives, rolling pin, cake tin, pan, pot, urn, basket, bucket',
    'figurine, ornament, statue, statuette, carving, bust, sculpture, snow globe, music box, mirror, picture frame',
  ),
  row(
    'object',
    'doll, dolls house, doll’s house, teddy bear, teddy, rattle, puppet, marionette, marble, marbles, board game, game',
    'jigsaw, jigsaw puzzle, puzzle, dice, chess set, chessman, chessmen, playing cards, pack of cards, spinning top, kite',
    'ball, bat, racket, skate, skates, sledge, hoop, rocking horse, toy train, train set, model boat, model ship, model',
    'building bricks',
  ),
  row(
    'object',
    'shoe, baby shoe, bootee, bootie, boot, slipper, sandal, clog, spat, hat, top hat, bowler hat, cap, bonnet, helmet, wig',
    'belt, buckle, button, walking stick, cane, umbrella, parasol, fan, spectacles, eyeglasses, glasses, lorgnette, monocle',
    'binoculars, telescope, magnifying glass, bag, handbag, satchel, briefcase, rucksack, knapsack, haversack, purse, wallet',
    'pouch, suitcase, trunk, hatbox, hat box, gas mask, insignia, armband, dog tag',
  ),
  row(
    'object',
    'box, wooden box, tin, casket, chest, cigar box, jewellery box, jewelry box, sewing box, work box, snuffbox, snuff box',
    'pen, fountain pen, pencil, pencil case, inkwell, ink stand, seal, rubber stamp, slate, abacus, slide rule, razor',
    'comb, brush, hairbrush, scissors, thimble, needle case, pipe, ashtray, lighter, cigarette case, whistle, compass',
    'camera, box camera, projector, typewriter, sewing machine, gramophone, phonograph, telephone, radio, wireless, globe',
    'fossil, souvenir spoon, stone, shell, sea shell, feather, pressed flower, antler, tooth, teeth, baby tooth, plait, braid, death mask',
    'furniture, chair, stool, desk, cradle, cot, flagpole, ship’s wheel',
  ),
  row(
    'textile',
    'gown, christening gown, christening robe, wedding dress, wedding gown, robe, coat, overcoat, jacket, blazer, cloak',
    'cape, suit, shirt, blouse, skirt, petticoat, corset, waistcoat, vest, nightgown, cardigan, jumper, sweater, trousers',
    'costume, garment, clothes, item of clothing, shawl, scarf, scarves, veil, glove, mitten, stocking, sock, collar, cuff',
    'necktie, tie, bow tie, bib, ribbon, sash, doily, doilies, tablecloth, napkin, towel, pillowcase, cushion cover, curtain',
    'tapestry, banner, rug, carpet, blanket, bedspread, coverlet, eiderdown, counterpane, patchwork, crochet, knitting',
  ),
  // What the rules on dangerous things ask about; the test of the tables holds them together.
  row(
    'object',
    'ammunition, ammo, cartridge, bullet, shell case, shell casing, artillery shell, shotgun shell, mortar shell',
    'live shell, brass shell, live round, trench art, grenade, hand grenade, bomb, shrapnel, gunpowder, powder horn',
    'powder flask, blasting cap, detonator, dynamite, flare, firework, firecracker, explosive, explosives',
    'weapon, rifle, pistol, revolver, shotgun, musket, gun, air gun, firearm, bayonet, sword, dagger, sabre, saber, gewehr',
    'pistole, fusil, medicine, medication, pill, pill bottle, pill box, medicine bottle, medicine chest, tablet, ampoule',
    'morphine, laudanum, opium, insulin, syringe, hypodermic, first aid kit, first aid box, ointment, iodine, quinine',
    'chloroform, ether, smelling salts, cough syrup, cough mixture, tonic, doctor’s bag, drugs, medizin, medisin, medikamente',
    'chemical, poison, bottle of acid, arsenic, cyanide, strychnine, acid, lye, caustic soda, ammonia, turpentine, petrol, gasoline',
    'kerosene, lamp oil, lighter fluid, solvent, weed killer, weedkiller, pesticide, insecticide, rat poison, ddt',
    'mothball, moth ball, naphthalene, formaldehyde, formalin, carbon tetrachloride, fire extinguisher',
    'darkroom chemicals, fixer, gas cylinder, paint tin, paint can, tin of paint, box of matches, cigarette lighter, aerosol',
    'battery, batteries, batterie, batterien, batteri, batterier, flashlight, torch, electric torch, pocket torch',
    'hearing aid, transistor radio, mobile phone, cell phone, laptop, dictaphone, cassette recorder, cassette player',
    'pocket calculator, calculator, talking toy, radium, uranium, luminous dial, luminous watch, luminous clock',
    'luminous compass, luminous wristwatch, luminous paint, mercury, quicksilver, thermometer, barometer',
    'blood pressure gauge, asbestos, asbest, taxidermy, stuffed bird, stuffed animal head, stuffed owl, stuffed pheasant',
    'stuffed duck, stuffed hawk, stuffed heron, stuffed fox, stuffed badger, stuffed stoat, stuffed otter',
    'stuffed squirrel, stuffed fish, stuffed pike, mounted bird, mounted head, mounted butterflies, hunting trophy',
    'birds under glass, lead soldier, tin soldier, toy soldier, toy soldiers, lead toy, painted toy, lead paint, lead type',
    'lead weight, celluloid',
  ),
];
