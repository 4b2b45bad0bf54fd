import { describe, expect, test } from 'vitest';
import { arrange } from '../../src/arrange/index.ts';
import type { Thing } from '../../src/catalogue/thing.ts';
import { dangerRules } from '../../src/review/danger.ts';
import { DANGER_WORDS } from '../../src/review/danger-words.ts';
import { reviewPrivate } from '../../src/review/private.ts';
import { dated, someCatalogue, someThing } from '../support/catalogue.ts';

// Rows as a family writes them, none of which is a danger or private, each with a word in it that elsewhere would be.
// Judged by reading, not by what the rules say of them. Title | kind | date | description | condition | note.
const HARMLESS = `
Letter from Ada about the medicine the heifer would not take | letter | 1931
Letter from Thomas to the doctor's wife about pills and potions | letter | 1912 | He thinks little of medicine.
Letter about the mouldings over the press house door | letter | 1906
Letter from Samuel about the shooting party at Stroud Hill | letter | 1933 | Six guns, two ducks and a cold.
Letter on the mill fire | letter | 1899
Letter from Hester, with a joke about egg shells | letter | 1909
Letter about the bank of the river giving way | letter | 1936
Letter on the school of fish below the Elbow | letter | 1934
Letter from Edmund: the banks of the fjord are all stone | letter | 1924
Letter from Peter about learning to fire a rifle | letter | 1944
Letter from Ruth asking for mothballs | letter | 1958 | They had moths in everything.
Letter from Kari about mice in the barn | letter | 1949
Letter on a rusty cable | letter | 1928
Letter about the new battery for the truck | letter | 1955
Letter from the county on the poison ivy at the landing | letter | 1947
Letter with a recipe for glue | letter | 1915 | "Boil the hooves, then strain."
Letter about a broken thermometer at the cannery | letter | 1913
Letter from Ada, who will retire | letter | 1960
Letter of thanks to the bank manager's dog | letter | 1962
Letter about the Great Depression | letter | 1933
Letter from Samuel, it was only an operation of the cable | letter | 1929
Letter about prisoners of the ice | letter | 1917
Letter about the sermon on sin and conviction | letter | 1950
Letters on the custom of school treats | letters | 1931 |  | good, no mould
Letters from Olav | letters | 1939 |  | no mould, rust or silverfish
Letters from Anders | letters | 1920 |  | clean and not brittle
Letters from Kari | letters | 1951 |  | staples removed | paper clips taken off
Letters of Mabel | letters | 1919 |  | rust-coloured ribbon
Letters of Lois | letters | 1952 |  | in acid-free folder now
Postcard of the Ellersby battery company band | postcard | 1908
Postcard, "wish you were here", with a picture of a gun dog | postcard | 1922
Postcard of Battery Point | postcard | 1911
Postcard of the sword dance | postcard | 1938
Postcard of the County Asylum from the river | postcard | 1910
Ada's diary with a list of medicines for the hens | diary | 1943
Ada's diary, bank holiday on Hatch Island | diary | 1937 | Fireworks over the river.
Diary of Hester: eggs, births and the price of gunpowder | diary | 1901
Notebook on bombs and shelters in the war | notebook | 1942 | Copied from the wireless.
Story of the sword in the stone, for the children | story | 1955
Poem: The Pistol and the Plough | poem | 1926
Speech on temperance and opium | speech | 1908
Deed of the rifle range field | deed | 1921
Licence for a pistol | certificate | 1924
Pistol licence |  | 1924
Receipt for a shotgun | receipt | 1931
Receipt for turpentine and paint | receipt | 1949
Receipts for weed killer and sprays | receipts | 1950
Bill for a barometer | bill | 1902
Medicine receipt |  | 1930
Account book of the ferry bank account | account book | 1922
Account book of the school fund | account book | 1961
Minutes: the resolution on the new boat was adopted | minutes | 1910
Minutes of the Ferry Company on the adoption of the rules | minutes | 1956
Insurance policy of the boat | business paper | 1951
Mortgage of the company | legal paper | 1930
Mortgage on the ferry | legal paper | 1946
School composition: A Day on the River Bank | school paper | 1932
School essay on Mercury, the planet | school paper | 1955
School song, words by Ada | school paper | 1935
Programme of the school play "The Poisoned Apple" | programme | 1958
Programme of the chapel fireworks | programme | 1953
Yearbook of the Ellersby school | yearbook | 1970
Recipe for vinegar pie | recipe | 1930
Recipe, jelly in a copper mould | recipe | 1940
Recipe for cough mixture of honey and cider vinegar | recipe | 1921
Recipe for pickled eggs in vinegar | recipe | 1938 | | smells of vinegar
Recipe with a pill of butter | recipe | 1911
Cookery book with a chapter on invalids and their medicine | cookery book | 1905
Cutting: boy finds grenade in the river | press cutting | 1948
Cutting about a divorce in Ellersby | press cutting | 1975
Cutting about the bank robbery |  | 1971
Cuttings on the asbestos mill | press cuttings | 1978
Newspaper, "The Ellersby Mercury" | newspaper | 1957
Magazine on guns and rods | magazine | 1961
Pamphlet on rat poison | pamphlet | 1952
Seed catalogue with a page of insecticide | pamphlet | 1949
Poster against the medicine show | poster | 1919
Map with the powder works and the rifle range | map | 1904
Plan of the school and its medicine cupboard | plan | 1922
Sheet music, "The Gun-Room March" | sheet music | 1899
Painting of a still life with a pistol | painting | 1880
Sketch of a stuffed owl | drawing | 1933
Photograph of Samuel with his rifle | photograph | 1917
Photograph of the mouldy hay | photograph | 1935
Photograph of the mill, falling apart | photograph | 1938 | The roof crumbling, mice everywhere.
Photo of Jim Tarbell with a sword-fish | photo | 1931
Photo of the bank on Main Street | photo | 1972
Photo of the hospital picnic | photo | 1980
Photograph of the rusted cable | photo | 1957 | Rust right through.
Photograph in a paper folder | photograph | 1961 | Taken outside the prison gate.
Photos of the truck stuck fast on the ramp | photos | 1950
Photograph: sleeves rolled up, ready for the harvest | photo | 1946 | | good
Photographs, new prints | photographs | 1999 | | good, never damp
Album of the orchard, corners not glue | album | 1928 | | no glue
Glazed jug, shell pattern | object | 1900
Egg cups in the shape of a shell | object | 1930
Box of sea shells |  | 1961
Toy gun of wood | toy | 1930
Toy pistol | toy | 1962
Ink cartridges, dried out | object | 1985
Fountain pen with a cartridge pen nib | object | 1985
Butter mould | object | 1890
Medicine ball from the school | object | 1950
Pillbox hat | textile | 1961
Stuffed toy bear | toy | 1955
Brass candlestick | object | 1919 | Given to him when the guns fell silent.
The chapel clock's key | object | 1911 | She wore it after the medicine failed.
Ruth's lunch tin, no battery in it | object | 1965
Gold ring, rolled gold | jewellery | 1920
Dress, mothproof | dress | 1960
Apron, not rusty | apron | 1930 | | pins removed
Film of the picnic on DVD | film | 1998
Video of the regatta | video | 1994
Film of the bridge, colour, 16 mm, from the county | film | 1993
Cassette, "Poison Arrow" copied off the radio | cassette | 1985
Record, "The Rifle Song" | gramophone record | 1938
Computer files of Nora's on battery acid | digital files | 2009
Poster, ALWAYS BRING YOUR SCHOOL BOOK | poster | 1970
Membership card of the rifle club | card | 1958
Christmas card with a robin on a gun carriage | Christmas card | 1954
Telegram: BANK CLOSED STOP SEND CASH | telegram | 1933
Telegram no. 1234567890 of the shipping office | telegram | 1942
Call the ferry house, telephone 610-555-0123 | notebook | 1957
Delivery note 4000 1234 5678 for barrels | receipt | 1968
Book with the number ISBN 978-0-306-40615-7 | book | 1985
Letter of 1923-05-02, answered 1923-06-17 | letter | 1923
Ticket 19230502 | ticket | 1923
Bullet pencil | object | 1940
Fishing reel | reel | 1960
Brooch with a loose pin | jewellery | 1925 | | pin bent
Tin of nails | object | 1950 | | rusty
Tin of ferry tickets | | 1920 | | rusty
Tobacco tin, Nordvik | | 1920 | | rust along the lid
Box of buttons |  | 1950 | From the rifle and gun club.
Chemical works token | token | 1930
Letter with the doctor's bill for the dog | letter | 1979
Lease of the upper field | legal paper | 1964
Pack of cards, corners rubbed | object | 1955 | Won from a man who had been shot at.
Letter, water stain along the bottom | letter | 1950 | | folded in eight
`;

function read(line: string, at: number): Thing {
  const [title = '', kind, date, description, condition, note] = line
    .split('|')
    .map((cell) => cell.trim() || undefined);
  return someThing({
    row: at + 2,
    title,
    people: ['Nora Quill'],
    ...(kind !== undefined && { kind }),
    ...(date !== undefined && { date: dated(date) }),
    ...(description !== undefined && { description }),
    ...(condition !== undefined && { condition }),
    ...(note !== undefined && { note }),
  });
}

describe('harmless rows, none of which may be called a danger or private', () => {
  const rows = HARMLESS.trim().split('\n').map(read);
  const catalogue = someCatalogue({ people: [{ name: 'Nora Quill', born: 1958 }] }, rows);
  const aid = arrange(catalogue, '2026-01-01');

  test('there are a hundred and more', () => {
    expect(rows.length).toBeGreaterThanOrEqual(100);
  });

  test('no finding, although Nora, whom all name, is living', () => {
    const found = [
      ...dangerRules(DANGER_WORDS)(catalogue, aid),
      ...reviewPrivate(catalogue, aid, '2026-01-01'),
    ];
    expect(found.map(({ rule, found: said }) => `${rule}: ${said}`)).toEqual([]);
  });
});
