import { type WordForms, wordForms } from './plural.ts';

/** Words for things that are counted as a kind and yet say more than it: a memory card is no file, but holds files. */
interface FurtherWords {
  /** The unit for one of them in `KINDS`. */
  kind: string;
  things: readonly WordForms[];
  source: string;
}

const row = (kind: string, words: string): FurtherWords => ({
  kind,
  things: words.split(', ').map(wordForms),
  source: 'common practice',
});

/**
 * Papers, pictures, carriers of sound and of files, by the words that families use for them; as in `object-words.ts`,
 * with an irregular plural behind a stroke. What they usually are, if not as their kind is, stands in the tables of
 * `housing/`. Extend it a row at a time.
 */
export const FURTHER_WORDS: readonly FurtherWords[] = [
  row(
    'digital file',
    'USB stick, USB drive, thumb drive, flash drive, SD card, memory card, CD, CD-ROM, compact disc, DVD, floppy disk, floppy disc, diskette, hard drive, hard disk, external drive, zip disk',
  ),
  row(
    'digital file',
    'digital photograph, digital photo, digital picture, digital image, digital recording, digital video, digital document',
  ),
  row(
    'sound tape',
    'cassette tape, compact cassette, music cassette, audio cassette tape, audiocassette, audio tape, microcassette, dictaphone tape, 8-track tape, DAT tape',
  ),
  row('video tape', 'VHS/VHS, VHS tape, VHS cassette, videotape, camcorder tape, betamax tape'),
  row('gramophone record', 'LP, vinyl record, shellac record'),
  row('obituary', 'mourning card, memorial card, funeral card, in memoriam card'),
  row(
    'greeting card',
    'Easter card, valentine, valentine card, sympathy card, thank-you card, thank you card',
  ),
  row(
    'greeting card',
    'get-well card, new year card, anniversary card, wedding card, visiting card, calling card',
  ),
  row('business paper', 'business card, trade card, cheque, payslip, pay slip, bank statement, tax return'),
  row('business paper', 'insurance policy, price list, minute book, order book'),
  row('account book', 'day book, wages book, wage book, savings book'),
  row('passport', 'visa, membership card, library card, ration card, permit, travel pass/travel passes'),
  row('military paper', 'pay book, military document, army document, call-up paper, draft card'),
  row('medical paper', 'medical document, vaccination card'),
  row('certificate', 'bond, war bond, savings bond, patent'),
  row('deed', 'mortgage'),
  row('diary', 'log book'),
  row('notebook', 'address book, appointment book, pocket book, commonplace book'),
  row('autograph album', 'visitors’ book, visitors book, autograph book'),
  row('manuscript', 'sermon, eulogy, note, thesis/theses, transcript, transcription'),
  row('press cutting', 'newspaper article, magazine article'),
  row('magazine', 'comic, comic book, newsletter'),
  row('book', 'almanac, atlas, dictionary, catechism'),
  row('programme', 'menu, menu card'),
  row('pamphlet', 'flyer, catalogue, prospectus/prospectuses'),
  row('print', 'stamp, postage stamp, bookmark, cigarette card, trading card'),
  row('drawing', 'sketchbook, sketch book'),
  row('map', 'nautical chart, sea chart'),
  row('photograph', 'polaroid, contact sheet, contact print, photographic print, photo print'),
  row('mounted photograph', 'stereograph, stereoview, stereo card'),
];
