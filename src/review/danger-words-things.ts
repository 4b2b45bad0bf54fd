import type { DangerColumn, DangerWord } from './danger-words.ts';
import { listed } from './listed.ts';
import type { Material } from './material.ts';

const P = 'common practice';
const M = 'from memory';

const ALL: readonly DangerColumn[] = ['kind', 'title', 'description', 'condition', 'note'];
const NAMED: readonly DangerColumn[] = ['kind', 'title'];
// A thing itself, or one whose kind nobody has noted; in papers and pictures it is only told of.
const THINGS: readonly Material[] = ['object', 'textile', 'unknown'];

/** Words for dangerous things. Extend them a row at a time; the order does not matter. */
export const THING_WORDS: readonly DangerWord[] = [
  {
    hazard: 'ammunition',
    words: listed(
      'ammunition, cartridge, cartridges, bullet, bullets, shell case, shell cases, shell casing',
      'shell casings, artillery shell, artillery shells, shotgun shell, shotgun shells, mortar shell, live shell, brass shell',
      'live round, live rounds, ammo, trench art, grenade, grenades, hand grenade, bomb, bombs, shrapnel, gunpowder',
      'powder horn, powder flask, blasting cap, blasting caps, detonator, detonators, dynamite',
      'flare, flares, firework, fireworks, firecracker, firecrackers, explosive, explosives',
    ),
    columns: ALL,
    of: THINGS,
    unless: listed(
      'ink, toner, printer, tape, game, film, fountain, pen, filter, paper, pleated, toy, point',
      'points, sequins, skirt, mould, mold, bath, stamp, pencil',
    ),
    source: P,
  },
  {
    hazard: 'weapons',
    words: listed(
      'rifle, rifles, pistol, pistols, revolver, revolvers, shotgun, musket, gun, guns, firearm',
      'bayonet, bayonets, sword, swords, dagger, sabre, saber',
    ),
    columns: ALL,
    of: THINGS,
    unless: listed(
      'club, toy, cap, water, glue, grease, staple, spray, pop, nerf, top, salute, dog, fish, fern, lily',
      'metal, deck, wooden, theatrical, cardboard',
    ),
    source: P,
  },
  {
    hazard: 'medicines',
    words: listed(
      'medicine, medicines, medication, medications, pill, pills, pill bottle, pill box',
      'medicine bottle, medicine chest, tablets, ampoule, ampoules, morphine, laudanum, opium',
      'insulin, syringe, syringes, hypodermic, first aid kit, first aid box, ointment, iodine',
      "quinine, chloroform, ether, smelling salts, cough syrup, tonic, cough mixture, doctor's bag, drugs",
      'medizin, medisin, medikamente',
    ),
    columns: ALL,
    of: THINGS,
    unless: listed(
      'ball, man, hat, show, stone, clay, wax, bronze, brass, wooden, writing, memorial, marble',
      'commemorative, computer, soap, wheel',
    ),
    source: P,
  },
  {
    hazard: 'chemicals',
    words: listed(
      'chemical, chemicals, poison, poisons, arsenic, cyanide, strychnine, acid, bottle of acid',
      'lye, caustic soda, ammonia, turpentine, petrol, gasoline, kerosene, lamp oil, lighter fluid',
      'solvent, weed killer, weedkiller, pesticide, insecticide, rat poison, ddt, mothballs',
      'moth balls, naphthalene, formaldehyde, formalin, carbon tetrachloride, fire extinguisher',
      'darkroom chemicals, fixer, gas cylinder, paint tins, paint cans, tins of paint, box of matches, cigarette lighter, aerosol',
    ),
    columns: ALL,
    of: THINGS,
    unless: listed('works, company, ivy, free, lace, lamp, sign, badge, rain, drops, paper, tissue'),
    source: P,
  },
  {
    hazard: 'arsenic',
    words: listed(
      "arsenic green, arsenical green, arsenical cloth, green with arsenic, scheele's green, emerald green wallpaper",
    ),
    columns: ALL,
    source: M,
  },
  {
    hazard: 'batteries',
    words: listed('battery, batteries, batterie, batterien, batteri, batterier'),
    columns: ALL,
    of: [...THINGS, 'sound'],
    unless: listed('park, artillery, gun, coastal, assault, hen, hens, point, field, farm'),
    source: P,
  },
  {
    hazard: 'batteries',
    words: listed(
      'flashlight, electric torch, pocket torch, hearing aid, transistor radio, mobile phone',
      'cell phone, laptop, dictaphone, cassette recorder, cassette player, pocket calculator',
      'talking toy',
    ),
    columns: NAMED,
    of: THINGS,
    source: P,
  },
  {
    hazard: 'radium',
    words: listed(
      'radium, luminous dial, luminous watch, luminous clock, luminous compass, luminous hands',
      'glows in the dark, glow in the dark, uranium, luminous wristwatch, luminous paint, luminous figures, luminous numerals',
    ),
    columns: ALL,
    of: THINGS,
    unless: ['stars', 'sticker', 'stickers'],
    source: M,
  },
  {
    hazard: 'radium',
    words: ['luminous'],
    columns: ALL,
    of: THINGS,
    beside: listed('watch, clock, dial, compass, hands, wristwatch, gauge, altimeter'),
    source: M,
  },
  {
    hazard: 'mercury',
    words: listed(
      'mercury, quicksilver, thermometer, thermometers, barometer, barometers, blood pressure gauge',
    ),
    columns: ALL,
    of: THINGS,
    unless: listed(
      'digital, spirit, alcohol, aneroid, dial, planet, god, statue, wings, motor, car, dime, ship',
      'courier',
    ),
    source: P,
  },
  {
    hazard: 'asbestos',
    words: listed('asbestos, gas mask, gas masks, asbest'),
    columns: ALL,
    of: THINGS,
    source: M,
  },
  {
    hazard: 'taxidermy',
    words: listed(
      'taxidermy, taxidermied, stuffed and mounted, stuffed bird, stuffed birds, stuffed animal head',
      'stuffed owl, stuffed pheasant, stuffed duck, stuffed hawk, stuffed heron, stuffed fox, stuffed badger',
      'stuffed stoat, stuffed otter, stuffed squirrel, stuffed fish, stuffed pike, mounted bird, mounted birds',
      'mounted head, mounted butterflies, hunting trophy, hunting trophies, birds under glass',
    ),
    columns: ALL,
    of: THINGS,
    unless: listed('toy, toys, plush, cloth, knitted, felt'),
    source: M,
  },
  {
    hazard: 'lead',
    words: listed(
      'lead paint, lead soldier, lead soldiers, tin soldier, tin soldiers, toy soldiers, lead toy',
      'lead toys, painted toy, painted toys, lead type, lead weights',
    ),
    columns: ALL,
    of: THINGS,
    unless: ['plastic'],
    source: M,
  },
  {
    hazard: 'celluloid',
    words: ['celluloid'],
    columns: ALL,
    of: THINGS,
    source: M,
  },
];
