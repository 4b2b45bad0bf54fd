import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arrange } from '../../src/arrange/index.ts';
import type { FindingAid } from '../../src/catalogue/finding-aid.ts';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { CROSSWALK } from '../../src/export/crosswalk.ts';
import { arbitraryFindingAid } from '../support/arbitrary-finding-aid.ts';
import { CROSSWALK_FORMATS, filledIn } from '../support/filled-places.ts';
import { fullFindingAid } from '../support/full-finding-aid.ts';

const EXAMPLE = fileURLToPath(new URL('../../examples/quill-ferry', import.meta.url));

/** What a format says in every document, whatever the finding aid holds: namespaces, code lists, kinds of lists. */
const CONSTANT: Readonly<Record<string, RegExp>> = {
  ead3: /^(?:@xmlns|control\/@\w+encoding|archdesc\/dsc\/@dsctype|archdesc\/did\/daoset\/@coverage|archdesc\/phystech\/@localtype)$/,
  ead2002:
    /^(?:@xmlns(?::xlink)?|eadheader\/@\w+encoding|eadheader\/filedesc\/notestmt\/note\/@type|archdesc\/dsc\/@type|eadheader\/profiledesc\/langusage|.*\/@xlink:type|archdesc\/phystech\/@type)$/,
  'eac-cpf':
    /^(?:@xmlns|control\/@\w+Encoding|.*\/@status|.*\/@targetType|.*\/targetEntity\/part\/@localType)$/,
  dc: /^oai_dc:dc\/@xmlns:(?:oai_dc|dc)$/,
  dcterms: /^records\/@xmlns(?::dcterms|:xsi)?$/,
};

const SEED = 1902;
const generated = fc.sample(arbitraryFindingAid({ complete: false, largest: 5 }), {
  numRuns: 250,
  seed: SEED,
});

/** What the generator does not make: ends of ranges that are no plain dates, and an address of a licence. */
const full = fullFindingAid();
const rare: FindingAid = {
  ...full,
  control: {
    ...full.control,
    rights: [
      { citation: 'CC0 1.0 Universal', address: 'https://creativecommons.org/publicdomain/zero/1.0/' },
    ],
  },
  collection: {
    ...full.collection,
    dates: ['195X/196X', '{195X,1971,198X..199X}'].map((edtf) => ({
      type: 'inclusive',
      expression: edtf,
      edtf,
    })),
  },
};

describe.each(CROSSWALK_FORMATS)('documents in the format $format', (format) => {
  const known = new Set(CROSSWALK.flatMap(format.placesOf));
  const constant = CONSTANT[format.format] ?? /^$/;
  const filled = new Set(
    [full, rare, ...generated].flatMap((aid) => filledIn(aid, format).map(({ path }) => path)),
  );

  it('fill nothing for which the crosswalk has no row', () => {
    expect([...filled].filter((path) => !known.has(path) && !constant.test(path))).toEqual([]);
  });

  it('fill nothing else in the example either', async () => {
    const aid = arrange(await loadCatalogue(EXAMPLE), '2026-05-14');
    const paths = filledIn(aid, format).map(({ path }) => path);
    expect(paths.length).toBeGreaterThan(50);
    expect([...new Set(paths)].filter((path) => !known.has(path) && !constant.test(path))).toEqual([]);
  });

  it('fill every place that the crosswalk names', () => {
    // A place with elements in it, and no text of its own, is filled where they are.
    const isFilled = (place: string) =>
      [...filled].some((path) => path === place || path.startsWith(`${place}/`));
    const containers = new Set(['archdesc/dsc/c', 'archdesc/c']);
    expect([...known].filter((place) => !containers.has(place) && !isFilled(place))).toEqual([]);
  });
});
