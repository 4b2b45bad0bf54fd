/** Since when there have been things of a kind; a thing dated earlier is a mistake in the date or in the kind. */
interface EarliestYear {
  /** The kind, by the singular of the table of kinds. */
  kind: string;
  year: number;
  because: string;
  source: string;
}

const M = 'from memory';

/** Kinds that did not always exist, with the year of the first one known. Extend it a row at a time. */
export const EARLIEST_YEARS: readonly EarliestYear[] = [
  { kind: 'photograph', year: 1826, because: 'the oldest photograph that survives', source: M },
  { kind: 'mounted photograph', year: 1839, because: 'the first photographs on paper', source: M },
  { kind: 'framed photograph', year: 1839, because: 'the first photographs for sale', source: M },
  { kind: 'photograph album', year: 1839, because: 'the first photographs on paper', source: M },
  { kind: 'daguerreotype', year: 1839, because: 'the first daguerreotypes', source: M },
  { kind: 'ambrotype', year: 1851, because: 'the first photographs of collodion on glass', source: M },
  { kind: 'tintype', year: 1853, because: 'the first tintypes', source: M },
  { kind: 'negative', year: 1835, because: 'the oldest negative that survives', source: M },
  { kind: 'glass plate', year: 1847, because: 'the first negatives on glass', source: M },
  {
    kind: 'slide',
    year: 1840,
    because: 'the first photographic lantern slides; small film slides followed in 1936',
    source: M,
  },
  { kind: 'film reel', year: 1888, because: 'the oldest film that survives', source: M },
  { kind: 'gramophone record', year: 1887, because: 'the patent for the flat disc', source: M },
  { kind: 'sound tape', year: 1928, because: 'the first magnetic tape', source: M },
  { kind: 'video tape', year: 1951, because: 'the first recordings of pictures on tape', source: M },
  { kind: 'postcard', year: 1861, because: 'the first cards printed to be posted', source: M },
  { kind: 'telegram', year: 1838, because: 'the first electric telegraphs', source: M },
  { kind: 'email', year: 1971, because: 'the first message between two computers', source: M },
  { kind: 'digital file', year: 1946, because: 'the first electronic computers', source: M },
];
