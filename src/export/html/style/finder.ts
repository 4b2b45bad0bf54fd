/** The search, its answers, and the picture of the years. */
export const FINDER = `
#part\\:find { background: var(--sheet); padding: 1.25rem 1.25rem .75rem; margin-bottom: 2rem; font-family: var(--sans); border-radius: 3px; }
#part\\:find p { margin-bottom: .6rem; }
#part\\:find p:empty { display: none; }
.words { display: flex; align-items: center; gap: .75rem; }
.words label { font-weight: 600; }
.words input { flex: 1; min-width: 0; font-size: 1.125rem; padding: .55rem .7rem; }
.help { font-size: .875rem; color: var(--quiet); }
.narrow { display: flex; flex-wrap: wrap; gap: .6rem 1rem; align-items: center; font-size: .9375rem; }
.narrow span { display: inline-flex; align-items: center; gap: .4rem; max-width: 100%; }
input, select, button { font: inherit; color: var(--ink); background: var(--paper); border: 1px solid var(--quiet); border-radius: 2px; padding: .35rem .5rem; min-height: 2.25rem; max-width: 100%; }
input[type=checkbox] { min-height: 0; width: 1.15rem; height: 1.15rem; accent-color: var(--accent); margin: 0; }
select { max-width: 13rem; min-width: 0; }
button { cursor: pointer; padding-inline: .8rem; }
button:hover { border-color: var(--accent); color: var(--accent); }
#find\\:chosen { display: flex; flex-wrap: wrap; gap: .5rem; }
#find\\:chosen button { border-color: var(--accent); color: var(--accent); }
#find\\:chosen button::after { content: " \\00D7"; }
#find\\:said { font-size: .9375rem; min-height: 1.5em; }
#part\\:found { margin-bottom: 2rem; }
#part\\:found .path { font: .8125rem/1.5 var(--sans); color: var(--quiet); margin: 0; }
#part\\:found .o { display: block; }
#part\\:found > ol > li { border-top: 1px solid var(--line); padding: .75rem 0; }
mark { background: var(--mark); color: inherit; border-radius: 2px; }
.entries button { font: .8438rem/1.3 var(--sans); min-height: 1.75rem; margin-top: .4rem; padding: .15rem .6rem; background: transparent; border-color: var(--line); color: var(--accent); }

.years { margin: 0 0 2.5rem; }
.years h3 { margin-top: 0; }
.years figcaption p { font-size: .9375rem; color: var(--quiet); margin-bottom: .6rem; }
.scripted { display: none; }
.live .scripted { display: inline; }
.bars p { display: grid; grid-template-columns: 12rem minmax(0, 1fr); align-items: end; gap: .75rem; margin: 0; font: .8438rem/1.25 var(--sans); border-bottom: 1px solid var(--line); }
.bars bdi { padding: .3rem 0; }
.bars svg { display: block; width: 100%; height: 1.9rem; fill: var(--accent); }
.bars .room { fill: transparent; }
.live .bars g { cursor: pointer; }
.live .bars g:hover .room, .bars .on .room { fill: var(--mark); }
.bars .axis { display: grid; grid-template-columns: none; grid-auto-flow: column; grid-auto-columns: minmax(0, 1fr); gap: 0; margin-left: 12.75rem; border: 0; color: var(--quiet); padding-top: .25rem; }
.axis span { white-space: nowrap; }
.years details { margin-top: .75rem; font: .9375rem/1.5 var(--sans); }
.wide { overflow-x: auto; margin-top: .5rem; }
.wide table { width: auto; margin: 0; }
.wide caption { font: .875rem/1.5 var(--sans); color: var(--quiet); }
.wide td { font-variant-numeric: tabular-nums; }
.wide td button { min-height: 1.75rem; padding: .1rem .4rem; }
@media (max-width: 34rem) {
  .bars p { grid-template-columns: minmax(0, 1fr); gap: 0; }
  .bars bdi { padding: .35rem 0 0; }
  .bars .axis { margin-left: 0; }
  .words { flex-wrap: wrap; }
  #part\\:find { margin-inline: -.5rem; padding-inline: 1rem; }
}
`;
