import { inches, mm } from './measures.ts';
import { exact, loose, type SizeName, sizeless } from './size-names.ts';

const M = 'from memory';

/** Discs and tapes with names, in the case they are kept in where they have one. */
export const MEDIA_SIZES: readonly SizeName[] = [
  loose('record|records|disc|discs|vinyl|gramophone record|gramophone records', inches(12, 12), M, {
    form: 'disc',
    thick: 3,
  }),
  exact('lp|lps|33 rpm|lp record|lp records', inches(12, 12), M, { form: 'disc', thick: 3 }),
  exact('single|singles|45 rpm|ep|eps', inches(7, 7), M, { form: 'disc', thick: 2 }),
  loose('78|78s|78 rpm|shellac', inches(10, 10), M, { form: 'disc', thick: 3 }),
  loose('33', inches(12, 12), M, { form: 'disc', thick: 3 }),
  loose('45|45s', inches(7, 7), M, { form: 'disc', thick: 2 }),
  exact('transcription disc', inches(16, 16), M, { form: 'disc', thick: 3 }),
  exact('cd|cds|compact disc|compact discs|cd rom', mm(142, 125), M, { form: 'digital', thick: 10 }),
  exact('dvd|dvds|blu ray', mm(190, 135), M, { form: 'digital', thick: 15 }),
  exact(
    'floppy|floppies|floppy disk|floppy disks|floppy disc|diskette|diskettes|floppy 3.5|3.5 floppy|3.5 floppy disk|floppy disk 3.5|3 1/2 floppy',
    mm(94, 90),
    M,
    { form: 'digital', thick: 4 },
  ),
  exact(
    'floppy 5.25|5.25 floppy|5.25 floppy disk|floppy disk 5.25|5 1/4 floppy',
    mm(140, 140),
    'in its sleeve; from memory',
    { form: 'digital', thick: 2 },
  ),
  loose('usb stick|usb drive|memory stick|thumb drive|flash drive', mm(80, 40), M, {
    form: 'digital',
    thick: 15,
  }),
  loose('hard drive|hard disk|external drive', mm(160, 110), M, { form: 'digital', thick: 30 }),
  loose(
    'cassette|cassettes|audio cassette|audio cassettes|compact cassette|c30|c46|c60|c90|c120|c 60|c 90|musikkassett|kassette|kassett',
    mm(109, 70),
    M,
    { form: 'tape', thick: 17 },
  ),
  exact('microcassette|microcassettes', mm(56, 36), M, { form: 'tape', thick: 9 }),
  exact('vhs|vhs tape|vhs tapes|vhs cassette|vhs cassettes', mm(188, 104), M, { form: 'tape', thick: 25 }),
  loose('video|videos|videotape|video tape|video cassette|videocassette', mm(188, 104), M, {
    form: 'tape',
    thick: 25,
  }),
  exact('vhsc|vhs c', mm(92, 59), M, { form: 'tape', thick: 23 }),
  exact('betamax|beta tape', mm(156, 96), M, { form: 'tape', thick: 25 }),
  exact('hi8|video 8|8 mm video|video8', mm(95, 63), M, { form: 'tape', thick: 15 }),
  exact('minidv|mini dv', mm(66, 48), M, { form: 'tape', thick: 12 }),
  exact('dat|dat tape', mm(73, 54), M, { form: 'tape', thick: 11 }),
  exact('8 track|eight track', mm(135, 100), M, { form: 'tape', thick: 23 }),
  loose('open reel|open reel tape|tape reel|tape|tapes', inches(7, 7), M, { form: 'tape', thick: 15 }),
  loose('reel|reels', inches(7, 7), M),
  sizeless('film|films|cine film|film reel|film reels|movie', 'film'),
];

/** Widths of cine film: names, the width, and how thick a reel of it is, in millimetres: the film, and two flanges. */
export const FILM_WIDTHS: readonly {
  names: readonly string[];
  wide: number;
  reel: number;
  source: string;
}[] = [
  { names: ['super 8', 'super8', 'standard 8', 'regular 8', 'double 8'], wide: 8, reel: 13, source: M },
  { names: [], wide: 9.5, reel: 15, source: M },
  { names: [], wide: 16, reel: 21, source: M },
  { names: [], wide: 28, reel: 33, source: M },
  { names: [], wide: 35, reel: 40, source: M },
];

/** Diameters in millimetres of the usual reels, and the feet of film that each takes: 3, 5, 7, 10, 12, 14 and 15 in. */
export const FILM_REELS: readonly { feet: number; across: number; source: string }[] = [
  { feet: 50, across: 76, source: M },
  { feet: 100, across: 92, source: M },
  { feet: 200, across: 127, source: M },
  { feet: 400, across: 178, source: M },
  { feet: 1000, across: 254, source: M },
  { feet: 1200, across: 305, source: M },
  { feet: 1600, across: 356, source: M },
  { feet: 2000, across: 381, source: M },
];
