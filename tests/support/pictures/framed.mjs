import sharp from 'sharp';

const EDGE = '#c9c5b9';

/**
 * A picture with a thin edge, so that it ends somewhere on a white page, as a PNG of at most 64 colours: letters and
 * plain areas need no more, and it is a third of the size.
 */
export async function framed(bytes) {
  const edge = { top: 2, bottom: 2, left: 2, right: 2, background: EDGE };
  const whole = await sharp(bytes).extend(edge).toBuffer();
  return sharp(whole)
    .png({ palette: true, colours: 64, dither: 0, compressionLevel: 9, effort: 10 })
    .toBuffer();
}
