import { type Finding, sayPlace, WEIGHTS, type Weight } from '../catalogue/finding.ts';
import { h, type Markup } from '../export/html/markup.ts';
import { plainPage } from '../export/html/plain-page.ts';
import type { Handling } from './handling.ts';
import type { Review } from './index.ts';
import { sayNotBoxed } from './not-to-be-boxed.ts';
import { sayTasks } from './say-handling.ts';
import { verdict } from './verdict.ts';

/** What each weight asks of its reader, as headings of the report. */
const HEADINGS: Record<Weight, string> = {
  must: 'This must be done',
  should: 'This should be done',
  consider: 'This is worth a thought',
  caution: 'Take care with this',
};

/** In the order in which a person has to read them: what can hurt first. */
const ORDER: readonly Weight[] = ['caution', ...WEIGHTS.filter((weight) => weight !== 'caution')];

const STYLE = `:root{color-scheme:light dark}
body{font:1rem/1.5 Georgia,"Times New Roman",serif;max-width:44rem;margin:2rem auto;padding:0 1rem}
h1{font-size:1.6rem;line-height:1.2}h2{font-size:1.2rem;margin-top:2.2rem;border-bottom:1px solid}
ul{list-style:none;padding:0}li{margin:0 0 1rem;break-inside:avoid}
.where,.rule{font-family:system-ui,sans-serif;font-size:.85rem}
.advice{margin:.15rem 0 0}p{margin:.3rem 0}
.task::before{content:"\\2610\\00a0"}
@page{margin:18mm 16mm;@bottom-center{content:counter(page)}}
@media print{body{max-width:none;margin:0}}`;

/**
 * The report as one page for reading and printing; it fetches nothing from anywhere.
 * @param day YYYY-MM-DD
 */
export function reportPage(
  title: string,
  day: string,
  review: Review,
  handling: readonly Handling[],
): string {
  const { findings, answered } = review;
  return plainPage(
    `What to look after: ${title}`,
    STYLE,
    h`<p>${`${day}. ${verdict(findings)}`}</p>
${ORDER.map((weight) => section(HEADINGS[weight], findings.filter((finding) => finding.weight === weight).map(entry)))}
${section('Before it goes into boxes', handling.map(handlingEntry))}
${section(
  'Answered',
  answered.map(
    ({ finding, because }) => h`<li><p>${finding.found}</p><p class="advice">${because}</p></li>\n`,
  ),
)}
`,
  );
}

const section = (heading: string, entries: readonly Markup[]): Markup =>
  entries.length === 0 ? h`` : h`<section>\n<h2>${heading}</h2>\n<ul>\n${entries}</ul>\n</section>\n`;

function entry({ place, found, advice, source, rule }: Finding): Markup {
  const where = sayPlace(place);
  return h`<li>${where !== '' && h`<p class="where">${where}</p>`}<p>${found}</p>${
    advice !== undefined && h`<p class="advice">${advice}</p>`
  }<p class="rule">${source === undefined ? rule : `${rule}; source: ${source}`}</p></li>\n`;
}

function handlingEntry(handling: Handling): Markup {
  const { box, folder, referenceCode, title, condition, notBoxed } = handling;
  const where = [
    ...(box === undefined ? [] : [`box ${box}`]),
    ...(folder === undefined ? [] : [`folder ${folder}`]),
    referenceCode,
  ].join(', ');
  const state = condition === undefined ? title : `${title} (${condition})`;
  const what = notBoxed === undefined ? state : `${state}: ${sayNotBoxed(notBoxed)}`;
  return h`<li><p class="where">${where}</p><p>${what}</p>${sayTasks(handling).map(
    (task) => h`<p class="advice task">${task}</p>`,
  )}</li>\n`;
}
