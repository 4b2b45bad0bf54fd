/** The tree of units. */
export const TREE = `
.units, .units ol { list-style: none; margin: 0; padding: 0; }
.units > .g { border-top: 1px solid var(--line); padding: .4rem 0; }
.units > .g > details > summary { padding: .9rem 0 .6rem; }
.units .g .g { border-top: 1px solid var(--line); }
summary { cursor: pointer; color: inherit; }
summary:hover .n { color: var(--accent); }
.g > details > summary { display: grid; grid-template-columns: 1.4rem minmax(0, 1fr); list-style: none; padding: .5rem 0; align-items: baseline; }
.g > details > summary::-webkit-details-marker { display: none; }
.g > details > summary::before { content: ""; grid-row: 1 / span 2; width: .5rem; height: .5rem; border: solid var(--accent); border-width: 0 2px 2px 0; rotate: -45deg; align-self: start; margin: .5rem 0 0 .1rem; }
.g > details[open] > summary::before { rotate: 45deg; margin-top: .35rem; }
.g > details > summary > * { grid-column: 2; }
.g > details > .b, .g > details > ol { margin-left: 1.4rem; }
.units h3, .units h4, .units h5, .units h6 { margin: 0; font-size: 1.35rem; }
.units h4 { font-size: 1.15rem; } .units h5, .units h6 { font-size: 1.0625rem; }
.t { margin: 0; }
.t .n { font-weight: 600; }
.t .d, .o { color: var(--quiet); }
h3 .d, h4 .d { font-weight: 400; }
.m { display: flex; flex-wrap: wrap; gap: 0 1.1rem; margin: .1rem 0 0; font: .8438rem/1.5 var(--sans); color: var(--quiet); }
.w { white-space: normal; }
.m .w, .m .w a { color: var(--accent); }
.m .c, .m .c a { color: var(--quiet); }
.one > details[open] > summary :is(.o, .w, .q) { display: none; }
a.c { text-decoration-color: var(--line); }
.x { font: 600 .75rem/1.4 var(--sans); color: var(--accent); border: 1px solid currentColor; border-radius: 2px; padding: 0 .35rem; align-self: center; margin-left: .3rem; }
.m .x { margin-left: 0; }
ol > .u:not(.g) { padding: .75rem 0; border-top: 1px solid var(--line); }
.u > p, .b > p { margin: .25rem 0; max-width: 42rem; }
.u > .m, .u > .t { max-width: none; }
.f { font-size: .9375rem; color: var(--quiet); }
.f > span { margin-right: .9rem; }
.u p > b, .b p > b, .f b { margin-right: .25rem; }
.f a { text-decoration-color: var(--line); }
.f a:hover { text-decoration-color: currentColor; }
li.u { scroll-margin-top: 5rem; }
li.u:focus { outline: none; }
.b { padding-bottom: .5rem; }
.copies { list-style: none; padding: 0; display: flex; flex-wrap: wrap; gap: 1rem; margin: .75rem 0 .25rem; font: .8438rem/1.4 var(--sans); }
.copies li { max-width: 15rem; }
.copies img { display: block; height: auto; max-width: 100%; max-height: 12rem; width: auto; margin-bottom: .35rem; border: 1px solid var(--line); background: var(--sheet); }
@media (max-width: 34rem) {
  .g .g > details > ol, .g .g > details > .b { margin-left: .2rem; padding-left: .8rem; border-left: 1px solid var(--line); }
  .units > .g > details > ol { margin-left: 0; }
}
`;
