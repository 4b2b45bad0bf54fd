/** Colours, letters and the frame of the page. */
export const SCREEN = `
:root {
  color-scheme: light dark;
  --paper: #fcfbf8; --sheet: #f3f0e9; --ink: #23211d; --quiet: #5d584f; --line: #d9d3c6; --accent: #17595a; --mark: #f7e3a4;
  --serif: "Iowan Old Style", "Palatino Linotype", Palatino, "URW Palladio L", P052, Charter, Georgia, serif;
  --sans: system-ui, -apple-system, "Segoe UI", "Noto Sans", "Liberation Sans", sans-serif;
}
@media (prefers-color-scheme: dark) {
  :root { --paper: #171a1a; --sheet: #202524; --ink: #e6e2d9; --quiet: #aaa598; --line: #3a403e; --accent: #8ccac2; --mark: #5b4a12; }
}
* { box-sizing: border-box; }
html { scroll-padding-top: 1.5rem; -webkit-text-size-adjust: 100%; text-size-adjust: 100%; }
body {
  margin: 0 auto; max-width: 76rem; padding: 0 1.25rem 6rem;
  font: 1.0625rem/1.55 var(--serif); color: var(--ink); background: var(--paper); overflow-wrap: break-word;
}
a { color: var(--accent); text-decoration-thickness: 1px; text-underline-offset: .18em; }
a:hover { text-decoration-thickness: 2px; }
:focus-visible { outline: 2px solid var(--accent); outline-offset: 3px; border-radius: 2px; }
.skip { position: absolute; left: -100rem; }
.skip:focus { left: 1.25rem; top: .5rem; background: var(--paper); padding: .5rem; z-index: 1; }
p, ul, ol, dl, figure { margin: 0 0 .9em; }
h1, h2, h3, h4, h5, h6 { font-weight: 600; line-height: 1.2; text-wrap: balance; }

header { padding: 4.5rem 0 2rem; max-width: 46rem; }
.over { font: 600 .8125rem/1.4 var(--sans); letter-spacing: .08em; color: var(--accent); margin-bottom: .75rem; }
h1 { font-size: clamp(2.1rem, 1.4rem + 3.4vw, 3.6rem); line-height: 1.08; margin: 0 0 .6rem; letter-spacing: -.012em; }
.when { font-size: clamp(1.3rem, 1.1rem + 1vw, 1.75rem); line-height: 1.3; color: var(--quiet); margin-bottom: 1.5rem; }
.sub { font-size: 1.25rem; color: var(--quiet); }
.lede { font-size: 1.25rem; line-height: 1.5; }

nav { font: .9375rem/1.4 var(--sans); border-block: 1px solid var(--line); padding: .75rem 0; margin-bottom: 2.5rem; }
nav ul { list-style: none; margin: 0; padding: 0; display: flex; flex-wrap: wrap; gap: .25rem 1.25rem; }
nav ul ul { display: none; }
nav a { display: inline-block; padding: .2rem 0; color: var(--ink); text-decoration: none; }
nav a:hover { color: var(--accent); text-decoration: underline; }

section { margin-bottom: 4rem; }
h2 { font-size: 1.85rem; margin: 0 0 1.25rem; padding-top: 1.25rem; border-top: 3px solid var(--accent); }
h3 { font-size: 1.2rem; margin: 2rem 0 .4rem; }
#part\\:story > p, #part\\:story > h3, .entries > li, .lede { max-width: 40rem; }

.glance { max-width: 46rem; margin-bottom: 2rem; }
.glance > div { display: grid; grid-template-columns: 9.5rem 1fr; gap: 0 1.5rem; padding: .45rem 0; border-bottom: 1px solid var(--line); }
dt, b { font: 600 .8125rem/1.5 var(--sans); color: var(--quiet); }
dt { padding-top: .15rem; }
dd { margin: 0; min-width: 0; }
dd p { margin: .3rem 0; }

.entries { list-style: none; padding: 0; }
.entries > li { padding: .9rem 0; border-bottom: 1px solid var(--line); }
.entries h3 { margin: 0 0 .2rem; }
.entries p { margin: .2rem 0; }
.at { font-size: .9688rem; margin: .4rem 0 0; padding-left: 1.1rem; }
.at li { margin: .15rem 0; }
.at li::marker { color: var(--line); }
.at .q::before { content: "· "; }
.at .w, .at .q { font: .8438rem/1.5 var(--sans); color: var(--quiet); }
li:target { background: var(--sheet); box-shadow: 0 0 0 .6rem var(--sheet); border-radius: 1px; }

table { border-collapse: collapse; font: .9375rem/1.4 var(--sans); width: 100%; margin-bottom: 2rem; }
caption { text-align: left; font: 600 1.2rem/1.3 var(--serif); padding-bottom: .4rem; }
th, td { text-align: left; vertical-align: top; padding: .35rem 1rem .35rem 0; border-bottom: 1px solid var(--line); }
th { font-weight: 600; color: var(--quiet); font-size: .8125rem; }

.boxes, .boxes ul { list-style: none; padding: 0; margin: 0; }
.boxes > li { content-visibility: auto; contain-intrinsic-size: auto 8rem; padding: .5rem .3rem 1rem; margin-inline: -.3rem; }
.boxes h3 { margin: 0 0 .3rem; }
.boxes li li { display: grid; grid-template-columns: 8.5rem minmax(0, 1fr) auto; gap: 0 1rem; align-items: baseline; padding: .3rem 0; border-top: 1px solid var(--line); }
.boxes span { font: .8438rem/1.5 var(--sans); color: var(--quiet); }
@media (min-width: 62rem) {
  body { display: grid; grid-template-columns: 14rem minmax(0, 1fr); column-gap: 3.5rem; padding-inline: 2rem; }
  header { grid-column: 2; }
  main { grid-column: 2; }
  nav { grid-column: 1; grid-row: 1 / span 2; border: 0; position: sticky; top: 0; align-self: start; max-height: 100vh; overflow: auto; padding: 4.5rem 0 1.75rem; scrollbar-width: thin; }
  nav ul { display: block; }
  nav ul ul { display: block; padding-left: .9rem; border-left: 1px solid var(--line); margin: .25rem 0 .5rem; font-size: .875rem; }
  nav a { padding: .25rem 0; }
}
@media (max-width: 34rem) {
  header { padding-top: 2.5rem; }
  .glance > div { grid-template-columns: 1fr; }
  .boxes li li { grid-template-columns: 1fr auto; }
  .boxes li li a { grid-column: 1 / -1; grid-row: 1; }
  th, td { padding-right: .6rem; }
}
`;
