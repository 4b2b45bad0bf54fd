import type { Bytes } from './bytes.ts';
import { boxes, riffChunks } from './chunks.ts';

/**
 * Length of a WAV recording in seconds, to the thousandth: the bytes of its data by the bytes a second that its `fmt `
 * chunk tells (RFC 2361). Undefined where it tells none, and for what is packed in another way than that arithmetic allows.
 */
export async function secondsOfWav(bytes: Bytes): Promise<number | undefined> {
  const chunks = await riffChunks(bytes);
  const format = chunks.find(({ name }) => name === 'fmt ');
  const data = chunks.find(({ name }) => name === 'data');
  if (format === undefined || data === undefined || format.length < 16) return undefined;
  const head = await bytes.read(format.at, 16);
  const rate = head.length < 16 ? 0 : head.readUInt32LE(8);
  const length = Math.min(data.length, bytes.size - data.at);
  return rate > 0 && length > 0 ? Math.round((1000 * length) / rate) / 1000 : undefined;
}

/** In bytes. The table of contents of a film of some hours is smaller. */
const MOST_OF_MOOV = 1 << 24;

/** Whether a film or recording says where it was made: the place that telephones write (ISO 6709; the names from memory). */
export async function filmHasLocation(bytes: Bytes): Promise<boolean> {
  const moov = (await boxes(bytes)).find(({ name }) => name === 'moov');
  if (moov === undefined) return false;
  const content = await bytes.read(moov.at, Math.min(moov.length, MOST_OF_MOOV));
  return content.includes(Buffer.from('\xA9xyz', 'latin1')) || content.includes('location.ISO6709');
}
