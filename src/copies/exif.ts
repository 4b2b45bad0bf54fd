import ExifReader from 'exifreader';
import type { Bytes } from './bytes.ts';
import type { CopyFacts } from './facts.ts';

/** Of these the Exif block stands at the beginning (Exif 2.32, 4.7.2); of all others it may stand anywhere. In bytes. */
const HEAD_OF_JPEG = 1 << 18;
/** A larger file is hardly a photograph with Exif, but a scan; it is not read a second time. In bytes. */
const MOST = 1 << 26;

const TAGS = {
  exif: ['Orientation', 'DateTimeOriginal', 'PixelXDimension', 'PixelYDimension', 'GPSLatitude'],
};

/** What the Exif block of a picture says that is of use; never where it was made, only that it says so. */
type ExifFacts = Pick<CopyFacts, 'width' | 'height' | 'orientation' | 'madeAt' | 'hasLocation'>;

/** Reads the Exif block of a picture, and whether its XMP has a place; nothing of either where they make no sense. */
export async function exifFacts(bytes: Bytes, mediaType: string): Promise<ExifFacts> {
  const isJpeg = mediaType === 'image/jpeg';
  if (!isJpeg && bytes.size > MOST) return {};
  const content = await bytes.read(0, isJpeg ? HEAD_OF_JPEG : bytes.size);
  const exif = tagsOf(content);
  const madeAt = dayOf(exif.DateTimeOriginal?.description);
  const width = exif.PixelXDimension?.value;
  const height = exif.PixelYDimension?.value;
  const orientation = exif.Orientation?.value;
  // XMP, part 2, 3.3: the Exif schema. XMP stands in these files as plain text.
  const hasLocation = isPlace(exif.GPSLatitude?.value) || content.includes('exif:GPSLatitude');
  return {
    ...(isCount(width) && isCount(height) && { width, height }),
    ...(isCount(orientation) && orientation <= 8 && { orientation }),
    ...(madeAt !== undefined && { madeAt }),
    ...(hasLocation && { hasLocation }),
  };
}

/** The tags by their names; no value of a foreign file is taken for what the standard says that it is. */
type Tags = Readonly<Record<string, { value?: unknown; description?: unknown } | undefined>>;

function tagsOf(content: Buffer): Tags {
  try {
    // Bytes of their own: a Buffer may be a part of a larger one.
    const view = new DataView(content.buffer, content.byteOffset, content.byteLength);
    return (ExifReader.loadView(view, { expanded: true, includeTags: TAGS }).exif ?? {}) as Tags;
  } catch {
    return {};
  }
}

const isCount = (value: unknown): value is number =>
  typeof value === 'number' && Number.isSafeInteger(value) && value > 0;

/** Degrees, minutes and seconds, each a fraction; cameras without a fix write 0/0. */
function isPlace(value: unknown): boolean {
  return (
    Array.isArray(value) &&
    value.length > 0 &&
    value.every((part) => Array.isArray(part) && part.length === 2 && Number(part[1]) !== 0)
  );
}

/**
 * Exif 2.32, 4.6.5: `2011:07:04 12:00:00`, with blanks for what is not known.
 * @returns the day, month or year as EDTF, or undefined where the clock was never set
 */
function dayOf(written: unknown): string | undefined {
  const found = typeof written === 'string' ? /^(\d{4}):(\d\d| {2}):(\d\d| {2})/.exec(written) : null;
  if (found === null || Number(found[1]) === 0) return undefined;
  const [, year = '', month = '', day = ''] = found;
  if (month.trim() === '') return year;
  if (Number(month) < 1 || Number(month) > 12) return undefined;
  if (day.trim() === '') return `${year}-${month}`;
  const last = new Date(Date.UTC(Number(year), Number(month), 0)).getUTCDate();
  return Number(day) >= 1 && Number(day) <= last ? `${year}-${month}-${day}` : undefined;
}
