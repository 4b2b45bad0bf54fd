import { paragraphs } from '../../catalogue/text.ts';
import { h, type Markup } from '../../export/html/markup.ts';
import { plainPage } from '../../export/html/plain-page.ts';
import type { Block, Paper } from './paper.ts';

const STYLE = `:root{color-scheme:light}
body{font:1rem/1.5 Georgia,"Times New Roman",serif;max-width:46rem;margin:2rem auto;padding:0 1rem;color:#111;background:#fff}
h1{font-size:1.6rem;line-height:1.2}h2{font-size:1.15rem;margin:1.8rem 0 .4rem;break-after:avoid}
p{margin:.5rem 0}ul{padding-left:1.2rem}li{margin:.25rem 0;break-inside:avoid}
.ticks{list-style:none;padding:0}.ticks li{padding-left:1.7rem;text-indent:-1.7rem}
.ticks li::before,.tick::before{content:"\\2610";font-size:1.15rem}.ticks li::before{display:inline-block;width:1.7rem;text-indent:0}
.lines{display:grid;grid-template-columns:max-content 1fr;gap:1.1rem .8rem;margin:1.4rem 0;break-inside:avoid}
.lines span{border-bottom:1px solid #444}
table{border-collapse:collapse;width:100%;margin:.6rem 0 1.2rem;font-size:.9rem}
th,td{border-bottom:1px solid #999;padding:.25rem .6rem .25rem 0;text-align:left;vertical-align:top}
thead{display:table-header-group}tr{break-inside:avoid}
td:first-child,td:nth-child(2){white-space:nowrap}.tick{text-align:center}
@page{margin:18mm 16mm;@bottom-center{content:counter(page) " / " counter(pages)}}
@media print{body{max-width:none;margin:0;padding:0;font-size:11pt}}`;

/** A paper as one page for reading and printing; it fetches nothing from anywhere. */
export const paperToPage = ({ title, blocks }: Paper): string =>
  plainPage(title, STYLE, h`${blocks.map(blockToMarkup)}`);

function blockToMarkup(block: Block): Markup {
  switch (block.kind) {
    case 'heading':
      return h`<h2>${block.text}</h2>\n`;
    case 'text':
      return h`${paragraphs(block.text).map((paragraph) => h`<p dir="auto">${paragraph}</p>\n`)}`;
    case 'list':
      return h`<ul>\n${itemsOf(block.items)}</ul>\n`;
    case 'ticks':
      return h`<ul class="ticks">\n${itemsOf(block.items)}</ul>\n`;
    case 'lines':
      return h`<div class="lines">\n${block.labels.map((label) => h`<div>${label}</div><span></span>\n`)}</div>\n`;
    case 'table': {
      const received = block.ticked && h`<th scope="col">Received</th>`;
      const tick = block.ticked && h`<td class="tick"></td>`;
      return h`<table>\n<thead><tr>${block.headings.map((one) => h`<th scope="col">${one}</th>`)}${received}</tr></thead>\n<tbody>\n${block.rows.map(
        (row) => h`<tr>${row.map((cell) => h`<td dir="auto">${cell}</td>`)}${tick}</tr>\n`,
      )}</tbody>\n</table>\n`;
    }
  }
}

const itemsOf = (items: readonly string[]) => items.map((item) => h`<li dir="auto">${item}</li>\n`);
