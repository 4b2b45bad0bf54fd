import type { Bytes } from './bytes.ts';
import { exifFacts } from './exif.ts';
import type { CopyFacts } from './facts.ts';
import { pictureLibrary } from './picture-library.ts';

/** What can be told of a picture. */
type Picture = Pick<
  CopyFacts,
  'width' | 'height' | 'orientation' | 'pages' | 'dpi' | 'madeAt' | 'hasLocation' | 'trouble'
>;

const MEASURED = new Set([
  'image/jpeg',
  'image/png',
  'image/tiff',
  'image/x-adobe-dng',
  'image/webp',
  'image/gif',
  'image/avif',
  'image/heic',
]);

/** A header of these that cannot be read is broken; of the others it may be of a kind that is not supported. */
const WELL_SUPPORTED = new Set(['image/jpeg', 'image/png', 'image/webp', 'image/gif']);

const HAVE_EXIF = /^image\/(?:jpeg|png|tiff|webp|heic|avif|x-.*)$/;

/** The facts of a picture, from its header; no pixel is decoded. Empty for what is no picture, or of a type unmeasured. */
export async function pictureFacts(path: string, bytes: Bytes, mediaType: string): Promise<Picture> {
  const exif = HAVE_EXIF.test(mediaType) ? await exifFacts(bytes, mediaType) : {};
  const simple = SIMPLE[mediaType];
  if (simple !== undefined) return { ...(await simple(bytes)), ...exif };
  return MEASURED.has(mediaType) ? { ...exif, ...(await headerFacts(path, bytes, mediaType)) } : exif;
}

async function headerFacts(path: string, bytes: Bytes, mediaType: string): Promise<Picture> {
  const sharp = await pictureLibrary();
  try {
    // After a name that ends with a bracket, the library would look for options within the brackets.
    const input = path.endsWith(']') ? await bytes.read(0, bytes.size) : path;
    const { width, height, density, orientation, pages } = await sharp(input, {
      failOn: 'error',
      // Nothing is decoded, so that a size beyond all measure does no harm.
      limitInputPixels: false,
    }).metadata();
    return {
      ...(width > 0 && height > 0 && { width, height }),
      // 72 is what the library and most cameras say where nothing is known.
      ...(density !== undefined && density !== 72 && { dpi: density }),
      ...(orientation !== undefined && { orientation }),
      ...(pages !== undefined && mediaType === 'image/tiff' && { pages }),
    };
  } catch (error) {
    const isUnsupported = error instanceof Error && /unsupported jpeg/i.test(error.message);
    return WELL_SUPPORTED.has(mediaType) && !isUnsupported ? { trouble: 'damaged' } : {};
  }
}

/** Types that the library does not read, and whose header tells the size at a place that never changes. */
const SIMPLE: Readonly<Record<string, (bytes: Bytes) => Promise<Picture>>> = {
  // BITMAPINFOHEADER, from memory: the height is negative where the first line is the top one.
  'image/bmp': async (bytes) => {
    const head = await bytes.read(18, 8);
    return head.length < 8 ? {} : sized(head.readInt32LE(0), Math.abs(head.readInt32LE(4)));
  },
  // ISO/IEC 15444-1, I.5.3.1: the box `ihdr`, which is the first of `jp2h`.
  'image/jp2': async (bytes) => {
    const head = await bytes.read(0, 4096);
    const at = head.indexOf('ihdr') + 4;
    return at < 4 || at + 8 > head.length ? {} : sized(head.readUInt32BE(at + 4), head.readUInt32BE(at));
  },
};

const sized = (width: number, height: number): Picture => (width > 0 && height > 0 ? { width, height } : {});
