import { M, type MediaType } from './media-type.ts';

const RAW = 'raw data of one maker of cameras; keep a TIFF or a JPEG made of it beside it';
const HEVC = 'read by few programs, and under patents; keep a TIFF or a JPEG made of it beside it';

/** A raw format that is a TIFF file of its maker's own kind. */
const raw = (type: string, extension: string, maker: string): MediaType => ({
  type,
  name: `raw photograph (${maker})`,
  extensions: [extension],
  inside: 'image/tiff',
  unfit: RAW,
  source: M,
});

/** Pictures. What is told by more marks stands before what is told by fewer. Extend it a row at a time. */
export const PICTURES: readonly MediaType[] = [
  {
    type: 'image/jpeg',
    name: 'JPEG picture',
    extensions: ['jpg', 'jpeg', 'jpe', 'jfif', 'mpo'],
    begins: [[[0, '\xFF\xD8\xFF']]],
    source: 'ISO/IEC 10918-1 (ITU-T T.81), annex B: the marker SOI',
  },
  {
    type: 'image/png',
    name: 'PNG picture',
    extensions: ['png'],
    begins: [[[0, '\x89PNG\r\n\x1A\n']]],
    source: 'W3C, Portable Network Graphics, 5.2',
  },
  {
    type: 'image/x-canon-cr2',
    name: 'raw photograph (Canon)',
    extensions: ['cr2'],
    begins: [
      [
        [0, 'II*\0'],
        [8, 'CR\x02'],
      ],
    ],
    unfit: RAW,
    source: M,
  },
  {
    type: 'image/tiff',
    name: 'TIFF picture',
    extensions: ['tif', 'tiff'],
    // Little-endian and big-endian, and the same for BigTIFF, whose offsets have 8 bytes.
    begins: [[[0, 'II*\0']], [[0, 'MM\0*']], [[0, 'II+\0\x08\0\0\0']], [[0, 'MM\0+\0\x08\0\0']]],
    source: 'TIFF 6.0, section 2; BigTIFF from memory',
  },
  {
    type: 'image/x-adobe-dng',
    name: 'DNG photograph',
    extensions: ['dng'],
    inside: 'image/tiff',
    source: M,
  },
  raw('image/x-nikon-nef', 'nef', 'Nikon'),
  raw('image/x-sony-arw', 'arw', 'Sony'),
  raw('image/x-pentax-pef', 'pef', 'Pentax'),
  raw('image/x-samsung-srw', 'srw', 'Samsung'),
  {
    type: 'image/x-canon-cr3',
    name: 'raw photograph (Canon)',
    extensions: ['cr3'],
    brands: ['crx '],
    unfit: RAW,
    source: M,
  },
  {
    type: 'image/x-fuji-raf',
    name: 'raw photograph (Fujifilm)',
    extensions: ['raf'],
    begins: [[[0, 'FUJIFILMCCD-RAW']]],
    unfit: RAW,
    source: M,
  },
  {
    type: 'image/x-olympus-orf',
    name: 'raw photograph (Olympus)',
    extensions: ['orf'],
    begins: [[[0, 'IIRO']], [[0, 'IIRS']], [[0, 'MMOR']]],
    unfit: RAW,
    source: M,
  },
  {
    type: 'image/x-panasonic-rw2',
    name: 'raw photograph (Panasonic)',
    extensions: ['rw2'],
    begins: [[[0, 'IIU\0']]],
    unfit: RAW,
    source: M,
  },
  {
    type: 'image/webp',
    name: 'WebP picture',
    extensions: ['webp'],
    begins: [
      [
        [0, 'RIFF'],
        [8, 'WEBP'],
      ],
    ],
    source: 'RFC 9649, 2.4',
  },
  {
    type: 'image/gif',
    name: 'GIF picture',
    extensions: ['gif'],
    begins: [[[0, 'GIF87a']], [[0, 'GIF89a']]],
    source: 'GIF89a specification, 17',
  },
  {
    type: 'image/bmp',
    name: 'BMP picture',
    extensions: ['bmp', 'dib'],
    // The four bytes after the size of the file are reserved and zero; two letters alone would match any text on BMW.
    begins: [
      [
        [0, 'BM'],
        [6, '\0\0\0\0'],
      ],
    ],
    source: 'RFC 7903, 1.2; the layout from memory',
  },
  {
    type: 'image/avif',
    name: 'AVIF picture',
    extensions: ['avif'],
    brands: ['avif', 'avis'],
    unfit: 'read by few programs yet; keep a TIFF or a JPEG made of it beside it',
    source: 'ISO/IEC 23000-22; the brands from memory',
  },
  {
    type: 'image/heic',
    name: 'HEIC picture',
    extensions: ['heic', 'heif', 'hif'],
    brands: ['heic', 'heix', 'heim', 'heis', 'hevc', 'hevx', 'mif1', 'msf1'],
    unfit: HEVC,
    source: 'ISO/IEC 23008-12; the brands from memory',
  },
  {
    type: 'image/jp2',
    name: 'JPEG 2000 picture',
    extensions: ['jp2', 'jpx', 'jpf', 'jpm'],
    begins: [[[0, '\0\0\0\x0CjP  \r\n\x87\n']]],
    source: 'ISO/IEC 15444-1 (ITU-T T.800), annex I.5.1',
  },
  {
    type: 'image/x-jp2-codestream',
    name: 'JPEG 2000 picture without a wrapper',
    extensions: ['j2k', 'j2c', 'jpc'],
    begins: [[[0, '\xFF\x4F\xFF\x51']]],
    source: 'ISO/IEC 15444-1 (ITU-T T.800), annex A: the markers SOC and SIZ',
  },
  {
    type: 'image/jxl',
    name: 'JPEG XL picture',
    extensions: ['jxl'],
    begins: [[[0, '\xFF\x0A']], [[0, '\0\0\0\x0CJXL \r\n\x87\n']]],
    unfit: 'read by few programs yet; keep a TIFF or a JPEG made of it beside it',
    source: M,
  },
  {
    type: 'image/vnd.adobe.photoshop',
    name: 'picture in the form of an editing program (PSD)',
    extensions: ['psd', 'psb'],
    begins: [[[0, '8BPS\0\x01']], [[0, '8BPS\0\x02']]],
    unfit: 'the form of one maker’s program; keep a TIFF made of it beside it',
    source: M,
  },
  {
    type: 'image/svg+xml',
    name: 'SVG drawing',
    extensions: ['svg'],
    inside: 'application/xml',
    source: 'W3C, Scalable Vector Graphics 2',
  },
];
