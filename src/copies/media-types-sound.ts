import { M, type MediaType } from './media-type.ts';

const OWN = 'the form of one maker; keep a copy in an open one beside it';
const RIFF = 'Multimedia Programming Interface and Data Specifications 1.0, RIFF; from memory';

/** Sound and moving pictures. What is told by more marks stands before what is told by fewer. */
export const SOUND_AND_FILM: readonly MediaType[] = [
  {
    type: 'audio/vnd.wave',
    name: 'WAV recording',
    // Broadcast Wave is a WAV file with one more chunk; RF64 and BW64 are those of over 4 GB.
    extensions: ['wav', 'wave', 'bwf', 'rf64'],
    begins: [
      [
        [0, 'RIFF'],
        [8, 'WAVE'],
      ],
      [
        [0, 'RF64'],
        [8, 'WAVE'],
      ],
      [
        [0, 'BW64'],
        [8, 'WAVE'],
      ],
    ],
    source: `RFC 2361; EBU Tech 3285, EBU Tech 3306; ${RIFF}`,
  },
  {
    type: 'video/vnd.avi',
    name: 'AVI film',
    extensions: ['avi'],
    begins: [
      [
        [0, 'RIFF'],
        [8, 'AVI '],
      ],
    ],
    source: RIFF,
  },
  {
    type: 'audio/aiff',
    name: 'AIFF recording',
    extensions: ['aif', 'aiff', 'aifc'],
    begins: [
      [
        [0, 'FORM'],
        [8, 'AIFF'],
      ],
      [
        [0, 'FORM'],
        [8, 'AIFC'],
      ],
    ],
    source: M,
  },
  {
    type: 'audio/flac',
    name: 'FLAC recording',
    extensions: ['flac'],
    begins: [[[0, 'fLaC']]],
    source: 'RFC 9639, 6',
  },
  {
    type: 'application/ogg',
    name: 'Ogg recording',
    extensions: ['ogg', 'oga', 'ogv', 'ogx', 'opus', 'spx'],
    begins: [[[0, 'OggS\0']]],
    source: 'RFC 3533, 6',
  },
  {
    type: 'audio/amr',
    name: 'AMR recording of a telephone',
    extensions: ['amr'],
    begins: [[[0, '#!AMR']]],
    unfit: 'made for telephones; keep a WAV made of it beside it',
    source: 'RFC 4867, 5',
  },
  {
    type: 'audio/mp4',
    name: 'M4A recording',
    extensions: ['m4a', 'm4b', 'mp4'],
    brands: ['M4A ', 'M4B '],
    source: 'ISO/IEC 14496-12; the brands from memory',
  },
  {
    type: 'video/quicktime',
    name: 'MOV film',
    extensions: ['mov', 'qt', 'mp4'],
    brands: ['qt  '],
    // The oldest have no `ftyp` box.
    begins: [[[4, 'moov']], [[4, 'mdat']], [[4, 'wide\0\0']]],
    source: M,
  },
  {
    type: 'video/3gpp',
    name: '3GP film of a telephone',
    extensions: ['3gp', '3g2', '3gpp', 'mp4'],
    brands: ['3gp4', '3gp5', '3gp6', '3g2a', '3g2b'],
    source: 'RFC 3839; the brands from memory',
  },
  {
    type: 'video/mp4',
    name: 'MP4 film',
    extensions: ['mp4', 'm4v', 'mov', 'm4a'],
    // Whatever else has an `ftyp` box.
    begins: [[[4, 'ftyp']]],
    source: 'ISO/IEC 14496-12, 4.3; RFC 4337',
  },
  {
    type: 'video/webm',
    name: 'WebM film',
    extensions: ['webm', 'weba'],
    begins: [[[0, '\x1A\x45\xDF\xA3']]],
    holds: ['webm'],
    source: 'RFC 8794, 8.1; WebM container guidelines from memory',
  },
  {
    type: 'video/matroska',
    name: 'Matroska film',
    extensions: ['mkv', 'mka', 'mk3d', 'webm'],
    begins: [[[0, '\x1A\x45\xDF\xA3']]],
    source: 'RFC 9559; RFC 8794, 8.1',
  },
  {
    type: 'video/mpeg',
    name: 'MPEG film',
    extensions: ['mpg', 'mpeg', 'vob', 'm2v', 'm2p'],
    begins: [[[0, '\0\0\x01\xBA']], [[0, '\0\0\x01\xB3']]],
    source: M,
  },
  {
    type: 'video/x-ms-wmv',
    name: 'Windows Media recording',
    extensions: ['wmv', 'wma', 'asf'],
    begins: [[[0, '\x30\x26\xB2\x75\x8E\x66\xCF\x11']]],
    unfit: OWN,
    source: M,
  },
  {
    type: 'application/vnd.rn-realmedia',
    name: 'RealMedia recording',
    extensions: ['rm', 'rmvb', 'ra', 'ram'],
    begins: [[[0, '.RMF']], [[0, '.ra\xFD']]],
    unfit: OWN,
    source: M,
  },
  {
    type: 'video/x-flv',
    name: 'Flash film',
    extensions: ['flv'],
    begins: [[[0, 'FLV\x01']]],
    unfit: 'for a player that is gone; keep an MP4 made of it beside it',
    source: M,
  },
  {
    // Told by its frames as well, in identify.ts.
    type: 'audio/mpeg',
    name: 'MP3 recording',
    extensions: ['mp3', 'mp2', 'mpga'],
    begins: [[[0, 'ID3']]],
    source: 'RFC 3003; ID3v2.3, 3.1; ISO/IEC 11172-3, 2.4.1.3',
  },
  {
    // Told by its frames, in identify.ts.
    type: 'audio/aac',
    name: 'AAC recording',
    extensions: ['aac'],
    begins: [[[0, '\xFF\xF1']], [[0, '\xFF\xF9']]],
    source: M,
  },
];
