import type { Context } from './context.ts';
import { h, type Markup } from './markup.ts';
import { isolated } from './prose.ts';
import { type Picture, pictureOf, type Row } from './span.ts';

// In units of the drawing: a stretch of years is so wide, and the tallest bar so high.
const WIDE = 10;
const HIGH = 28;

/** The years covered, as bars for those who see them and as a table for everybody. */
export function yearsPicture({ top }: Context): Markup | undefined {
  const picture = pictureOf(top);
  if (picture === undefined) return undefined;
  const { rows, step } = picture;
  const most = Math.max(...rows.flatMap(({ counts }) => counts));
  return h`<figure id="part:years" class="years">
<figcaption><h3>The years covered</h3>
<p>A bar for each ${step === 1 ? 'year' : step === 10 ? 'decade' : `stretch of ${step} years`} and group; the taller, the more.<span class="scripted"> Choose a bar to see what is from then.</span></p></figcaption>
<div class="bars" aria-hidden="true">${rows.map((row) => bars(row, picture, most))}
<p class="axis">${axis(picture)}</p></div>
<details><summary>The same as a table</summary>
${table(picture)}
</details></figure>`;
}

function bars({ group, counts }: Row, picture: Picture, most: number): Markup {
  const { title, id } = group.component;
  const width = counts.length * WIDE;
  const drawn = counts.flatMap((count, at) => (count === 0 ? [] : [bar(count, at, picture, most)]));
  return h`<p><bdi>${title}</bdi><svg viewBox="0 0 ${width} 30" preserveAspectRatio="none" data-g="${id}">${drawn}</svg></p>`;
}

/** The root of the share, so that one thing is still seen beside a thousand; over it, as much room to point at as can be. */
function bar(count: number, at: number, picture: Picture, most: number): Markup {
  const height = Math.max(2, Math.round(Math.sqrt(count / most) * HIGH));
  const x = at * WIDE;
  return h`<g data-y="${stretchOf(picture, at).join('/')}"><title>${stretchName(picture, at)}: ${count}</title><rect class="room" x="${x}" y="0" width="${WIDE}" height="30"/><rect x="${x + 1}" y="${30 - height}" width="${WIDE - 2}" height="${height}"/></g>`;
}

const stretchOf = ({ starts, step }: Picture, at: number): [number, number] => {
  const start = starts[at] ?? 0;
  return [start, start + step - 1];
};

function stretchName(picture: Picture, at: number): string {
  const [start, end] = stretchOf(picture, at);
  if (picture.step === 1) return String(start);
  return picture.step === 10 ? `${start}s` : `${start}-${end}`;
}

/** A year now and then, as many as there is room for. */
function axis({ starts }: Picture): Markup[] {
  const every = Math.max(1, Math.ceil(starts.length / 7));
  return starts.map((start, at) => (at % every === 0 ? h`<span>${start}</span>` : h`<span></span>`));
}

function table(picture: Picture): Markup {
  const { starts, rows } = picture;
  const hasUndated = rows.some(({ undated }) => undated > 0);
  const head = starts.map((_, at) => h`<th scope="col">${stretchName(picture, at)}</th>`);
  const body = rows.map(({ group, counts, undated }) => {
    const cells = counts.map((count, at) =>
      count === 0
        ? h`<td></td>`
        : h`<td data-y="${stretchOf(picture, at).join('/')}" data-g="${group.component.id}">${count}</td>`,
    );
    return h`<tr><th scope="row">${isolated(group.component.title)}</th>${cells}${hasUndated && h`<td>${undated}</td>`}</tr>\n`;
  });
  return h`<div class="wide" role="region" aria-label="Things by year and group" tabindex="0"><table><caption>How many entries of the list are from each time. An entry that spans several is counted in each.</caption>
<thead><tr><th scope="col">Group</th>${head}${hasUndated && h`<th scope="col">undated</th>`}</tr></thead>
<tbody>${body}</tbody></table></div>`;
}
