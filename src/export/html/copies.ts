import type { DigitalCopy } from '../../catalogue/component.ts';
import type { Context } from './context.ts';
import { linkTo } from './link.ts';
import { h, type Markup } from './markup.ts';
import { isolated, prose } from './prose.ts';
import type { Unit } from './unit.ts';

/**
 * The digital copies of a unit, each a link to the file beside the page, with a small picture where there is one.
 * Of what is restricted the page shows no copy, and names no file.
 */
export function copiesOf({ component, isClosed }: Unit, context: Context): Markup | undefined {
  const { digitalCopies, title } = component;
  if (digitalCopies.length === 0) return undefined;
  if (isClosed) return h`<p class="f"><b>Copy</b> not shown, since access is restricted</p>`;
  return h`<ul class="copies">${digitalCopies.map((copy) => h`<li>${shown(copy, title, context)}</li>`)}</ul>`;
}

function shown(copy: DigitalCopy, title: string, { thumbnailOf, addressOf }: Context): Markup {
  const { file, origin, note, mediaType } = copy;
  const address = addressOf(file);
  const name = copy.title ?? file.split('/').at(-1) ?? file;
  const what = origin === 'borndigital' ? 'File' : 'Digital copy';
  const thumbnail = thumbnailOf(file);
  const words =
    thumbnail === undefined
      ? h`${what}: ${isolated(mediaType === undefined ? name : `${name} (${mediaType})`)}`
      : h`<img src="${thumbnail.source}" width="${thumbnail.width}" height="${thumbnail.height}" loading="lazy" alt="${`${what} of “${title}”`}">${isolated(name)}`;
  return h`${linkTo(address, words)}${note !== undefined && prose(note)}`;
}
