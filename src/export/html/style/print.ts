/**
 * The page as a booklet. Page numbers and running heads stand in the margin boxes of CSS Paged Media Level 3, 4; every
 * folder is pulled out, and what only serves a screen is gone.
 */
export const PRINT = `
@page {
  margin: 22mm 18mm 20mm;
  @top-left { content: RUNNING-HEAD; font: 8.5pt "Liberation Sans", Arial, sans-serif; color: #444; }
  @bottom-center { content: counter(page) " / " counter(pages); font: 8.5pt "Liberation Sans", Arial, sans-serif; color: #444; }
}
@page :first { @top-left { content: none; } @top-right { content: none; } }
@page contents { @top-right { content: "Contents"; font: 8.5pt "Liberation Sans", Arial, sans-serif; color: #444; } }
@page people { @top-right { content: "People"; font: 8.5pt "Liberation Sans", Arial, sans-serif; color: #444; } }
@page boxes { @top-right { content: "Box by box"; font: 8.5pt "Liberation Sans", Arial, sans-serif; color: #444; } }
@media print {
  :root { color-scheme: light; --paper: #fff; --sheet: #fff; --ink: #000; --quiet: #444; --line: #bbb; --accent: #17595a; --mark: #fff; }
  html { font-size: 9.5pt; }
  body { display: block; max-width: none; padding: 0; line-height: 1.4; }
  .entries { columns: 2; column-gap: 8mm; }
  .entries p, .u > p, .b > p { max-width: none; }
  summary { break-inside: avoid; }
  nav, .skip, form, noscript, #part\\:found, button, .years details { display: none; }
  #part\\:list { display: block !important; }
  .scripted { display: none !important; }
  header { padding: 40mm 0 10mm; max-width: none; }
  h1 { font-size: 28pt; }
  h2 { font-size: 16pt; padding-top: 4mm; }
  h3 { font-size: 11pt; margin-top: 5mm; }
  h2, h3, h4, h5, h6, summary { break-after: avoid; }
  .lede { font-size: 12pt; max-width: 150mm; }
  #part\\:story { break-before: page; }
  #part\\:contents { page: contents; }
  #part\\:people { page: people; }
  #part\\:boxes { page: boxes; }
  .u:not(.g), .entries > li h3, .at li, figure, .bars p { break-inside: avoid; }
  p { orphans: 2; widows: 2; }
  a { color: inherit; text-decoration: none; }
  details::details-content { content-visibility: visible; display: block; height: auto; }
  .one > details > summary :is(.o, .w, .q) { display: none; }
  .g > details > summary { display: block; }
  .g > details > summary::before, summary::marker { content: ""; display: none; }
  .entries details > summary { list-style: none; }
  .g > details > .b, .g > details > ol { margin-left: 5mm; }
  .units > .g > details > ol { margin-left: 0; }
  .units h3 { font-size: 13pt; margin: 0; }
  .entries h3, .boxes h3 { margin: 0; }
  .entries > li { padding: 2mm 0; }
  .boxes > li { padding: 1mm 0 3mm; margin: 0; }
  .boxes li li { padding: .6mm 0; }
  ol > .u:not(.g), .g > details > summary { padding: 1.6mm 0; }
  section { margin-bottom: 8mm; }
  .copies img { max-height: 35mm; }
  .boxes > li { content-visibility: visible; }
  .boxes li li { break-inside: avoid; }
  li:target { background: none; box-shadow: none; }
}
`;
