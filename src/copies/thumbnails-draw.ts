import { pictureLibrary } from './picture-library.ts';

/** A small picture of a digital copy, fit to stand within a page. */
export interface Thumbnail {
  /** A `data:` address of a JPEG picture without any metadata. */
  source: string;
  /** In pixels. */
  width: number;
  height: number;
}

/** The long side, in pixels. */
const SIDE = 240;

/**
 * More pixels than this are not drawn. A map of half a square metre (A1) has 279 million at 600 to the inch; without a
 * limit, a file of a few kilobytes could claim more than there is memory.
 */
export const MOST_PIXELS = 300_000_000;

/**
 * Draws a thumbnail: upright, in the colours of the web (sRGB), what is transparent on white, the first page or frame.
 * The same content gives the same bytes. It is a baseline JPEG, which every program of the last thirty years can read;
 * WebP measured no smaller on photographs of this size. Without being told to, the library hands on no metadata of any
 * kind: no Exif, so no location, no XMP, no colour profile.
 * @returns undefined where the content is damaged or of a kind too rare for the library, or has too many pixels
 */
export async function drawThumbnail(content: Buffer): Promise<Buffer | undefined> {
  const sharp = await pictureLibrary();
  try {
    return await sharp(content, { failOn: 'error', limitInputPixels: MOST_PIXELS })
      .autoOrient()
      .flatten({ background: 'white' })
      .resize(SIDE, SIDE, { fit: 'inside', withoutEnlargement: true })
      .jpeg({ quality: 65, trellisQuantisation: true, overshootDeringing: true, quantisationTable: 3 })
      .toBuffer();
  } catch {
    return undefined;
  }
}

/**
 * A thumbnail as it goes into a page: ITU-T T.81, annex B.
 * @returns undefined where the bytes are no baseline JPEG that small, break off, or carry anything beside the picture
 */
export function readThumbnail(jpeg: Buffer): Thumbnail | undefined {
  const [SOI, SOS, EOI] = [0xffd8, 0xffda, 0xffd9];
  // Tables of quantisation and of codes, their restart interval, and the baseline frame; no APPn and no comment.
  const [DQT, DHT, DRI, SOF0] = [0xffdb, 0xffc4, 0xffdd, 0xffc0];
  if (jpeg.length < 4 || jpeg.readUInt16BE(0) !== SOI || jpeg.readUInt16BE(jpeg.length - 2) !== EOI)
    return undefined;
  let [width, height] = [0, 0];
  for (let at = 2; at + 9 <= jpeg.length; at += 2 + jpeg.readUInt16BE(at + 2)) {
    const marker = jpeg.readUInt16BE(at);
    if (marker === SOS) {
      const isSmall = [width, height].every((side) => side > 0 && side <= SIDE);
      return isSmall
        ? { source: `data:image/jpeg;base64,${jpeg.toString('base64')}`, width, height }
        : undefined;
    }
    if (marker === SOF0) [height, width] = [jpeg.readUInt16BE(at + 5), jpeg.readUInt16BE(at + 7)];
    else if (marker !== DQT && marker !== DHT && marker !== DRI) return undefined;
  }
  return undefined;
}
