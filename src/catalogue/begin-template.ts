/** What `kinfonds begin` can fill in already; what is undefined is left for the owner to write. */
export interface Start {
  title?: string;
  prefix?: string;
  repository?: string;
}

/**
 * A new collection.yaml: every setting there is, explained in plain words. Lines with two hashes explain; lines
 * with one are examples, so that taking that hash and its blank away leaves a valid file (a test does so).
 */
export function settingsTemplate({ title, prefix, repository }: Start): string {
  return `## The collection as a whole. Fill in the three parts that must be there: title, prefix, repository.
## Everything else may wait, and most of it may stay away.
##
## Lines that begin with two hashes (##) explain. Lines that begin with one hash and a blank are examples:
## to use one, take away the hash and the blank, and put your own words in place of the example.
## Each entry is a name, a colon, a blank, and the text. Set lines in with blanks, never with tabs.
## A text that holds a colon, a hash or a quotation mark stands safely like this: "Ferry papers: 1902-1988".
## A long text begins with name: | and goes on in the lines below, each set in by two blanks.

## What the collection is called: best the family's name and what it is made of.
title:${filled(title)}
## What every reference code begins with, such as QF for the Quill family.
prefix:${filled(prefix)}
## The sign between the parts of a reference code: one of / . : - _
# separator: /
## Who keeps the collection now: the family itself, or an archive. Only the name must be there.
repository:
  name:${filled(repository)}
#   address: [The Ferry House, Sallow Reach]
## The country as two capital letters.
#   country: US
## The code of an archive, if it has one (an ISIL).
#   isil: US-XxQuill

## Whose papers these are: the people, or the family, who made or gathered them.
# creators:
#   - Ada Quill
#   - Quill family
## From when to when. If it is not given, it is worked out from the list.
# dates: 1898-1988
## How much it is, if you have measured it.
# extent: 2 boxes (0.8 linear feet)
## How you write a date in figures, if you do: day-month (5/6/1962 is 5 June) or month-day (5/6/1962 is May 6).
# dateOrder: day-month
## The years to be expected. They tell which century '61 is, and find a year that was mistyped.
# earliestYear: 1880
# latestYear: 2010
## The language in which you write your list and this file. eng is English.
# language: eng
## The languages of the things themselves; those in the list are added.
# languages: [English, Norwegian]

## One or two sentences that tell a stranger what this is.
# abstract: Letters, photographs and account books of a family that kept a river ferry and its orchard.
## The story of the family: who they were, where they lived, what they did. An empty line parts two paragraphs.
# history: |
#   Three generations of the Quill family kept the ferry at Sallow Reach and the orchard behind it.
#   Nils Quill bought the ferry in 1898; his granddaughter Ada closed it when the bridge was built.
## What the collection holds, as a whole.
# scope: Mostly letters between Ada and Nils Quill, with photographs of the ferry and of every harvest.
## Through whose hands the things have come.
# custody: Ada Quill kept the papers in the ferry house until 1988; then her nephew Tom had them.
## How whoever keeps them now came by them.
# acquisition: Given by Tom Quill in 2024.
## What was taken out or thrown away, and why.
# appraisal: Blank order forms were not kept.
## Whether more is to come.
# accruals: Tapes from the attic are still to be listed.
## Why it is in the order it is in. If it is not given, one is written from how it was sorted.
# arrangement: Sorted by kind of thing, and then by date. The album is as Ada left it.

## Who may see it. Records of living people (health, school, bank) are private in most places: the law where you
## live, and the archive that is to receive the collection, decide. If nothing is said, this stays open.
# access:
#   statement: Open, save for the letters about Ada's illness.
#   until: 2040
## What may be done with it. To own a letter is not to own the right to publish it.
# use: The heirs of the writers hold the copyright in the letters.
## The legal state of the collection, if there is something to say.
# legalStatus: On loan from the family.
## Whether something about its state makes it hard to use.
# physical: The glass plates are fragile and may only be looked at with help.
## What one needs to see or hear it.
# technical: The reel needs a projector for 8 mm film.
## Other lists of the collection.
# findingAids: Ada's own card index lies in the first box.
## Where the originals are, if these are copies.
# originals: The parish has the church book of which pages are copied here.
## Where there are copies.
# copies: The photographs are scanned; the family has the scans.
## Things elsewhere that belong with it.
# related: The river office holds the log books of the ferry.
## Things that were part of it and were taken elsewhere.
# separated: The orchard's tools went to the village museum.
## What has been published about it or from it.
# publications: Tom Quill, The Last Ferry, 2010.
## How someone who quotes from it should name it.
# citation: Quill family papers, The Ferry House, Sallow Reach.
## Who listed it, when, and how.
# processing: Listed by Tom Quill in the winter of 2024, box by box.
## Anything else that should be said.
# notes:
#   - Names on the backs of the photographs are in Ada's hand.
## What it is about, in a few words each, for people who search.
# subjects: [Ferries, Orchards]

## Who wrote this description, and when. If no day is given, it is the day of the export.
# author: Tom Quill
# described: 2024-11-03
## What you looked at to write it, beyond the things themselves.
# sources:
#   - The family Bible
## What others may do with the description itself (not with the things), and where that is laid down.
# rights: CC0 1.0 Universal
# rightsAddress: https://creativecommons.org/publicdomain/zero/1.0/

## The people, families and organisations in the list. Only those that need more than a name must stand here.
# people:
##     The name as you write it in the list; under \`also\`, other ways in which it is written there.
#   - name: Ada Quill
#     also: [Aunt Ada, A. Q.]
##     One of: person, family, corporateBody (a firm, a club, a parish).
#     type: person
##     The name as an archive would file it. If it is not given, it is made from the name and the dates.
#     heading: Quill, Ada, 1902-1988
#     born: 1902
#     died: 1988-05-12
##     Where they were born and died; under \`places\`, where else they lived.
#     birthplace: Sallow Reach
#     deathplace: Sallow Reach
#     places: [Osier Point, Heron Ford]
##     What they did for a living.
#     occupations: [ferrywoman, apple grower]
##     Other people of this list, and what each was to this one. Only what stands here is taken as known: that Nils
##     had a daughter must stand with Nils, if it is to be said there too.
#     relations:
#       - to: Nils Quill
#         as: father
#     history: Kept the ferry from 1931 until the bridge was opened.
##     Where the heading is registered, if it is: the code of the register, and the number or address there.
#     source: local
#     identifier: quill-ada
#   - name: Nils Quill

## Who is to receive the collection, if that is known: an archive, a library, a society. Only the name must be there.
# recipient:
#   name: Osier County Historical Society
#   address: [12 Mill Street, Heron Ford]
##   Its code, if it has one (an ISIL, which it will know), and its country as two capital letters.
#   isil: US-XxOsier
#   country: US
##   The forms it wants, if it has said so: ead3, ead2002, dc, dcterms, eac-cpf, html, json, csv. Those are then
##   what kinfonds export writes when it is not asked for any others.
#   formats: [ead3, eac-cpf]
##   The list from which it wants the codes of languages in EAD3: iso639-2b or iso639-3.
#   languageCodes: iso639-2b
##   What stands between several values in one cell of dublin-core.csv.
#   separator: " | "
##   Down to which level every unit is to have a record in Dublin Core: series, file, item … If it is not given, all
##   files have one, and whatever has a digital copy or is restricted.
#   recordsDownTo: item
##   What reference codes begin with there, if not with your own prefix.
#   prefix: OC-17

## What kinfonds hand-over is to know.
# handOver:
##   What stays with the family: numbers or titles of things, or groups under the titles that kinfonds arrange shows.
##   None of it goes into the package, in no form; nor does what the column stays of the list marks, nor the column
##   family note.
#   keep: [Nils Quill's watch, "17", Recipes]

## How to read the list, where it is not understood by itself. kinfonds begin --preview shows what is understood.
# list:
##   The file that is the list, where there are several: list.xlsx, list.ods, list.csv or list.tsv.
#   file: list.csv
##   The encoding of list.csv, if letters such as é come out wrong: utf-8, utf-16le, utf-16be, windows-1252, mac-roman.
#   encoding: utf-8
##   Which sheets of a workbook to read; all that hold things, if nothing is said. Each is then a series.
#   sheets: [Letters, Photographs]
##   The row in which the headings stand.
#   headings: 1
##   What a heading of yours means: the name of a column, or kept, for what is to go into the notes as it is.
#   columns:
#     On the back: description
#     Shelf: kept

## How to sort. Try kinfonds arrange --compare before you move anything.
# sort:
##   The groups, broadest first: kind, person, place, occasion, decade, year, language, series.
#   groups: [kind]
##   The order in each group: date, title, number, kind, person, place, occasion, list (as in the list).
#   order: [date, title]
##   One folder for each: year, decade, occasion, person, folder (as the list says), group.
#   folders: year

## Folders and boxes. If nothing stands here, the usual ones of your country are reckoned with; kinfonds supplies says
## which and how many.
# housing:
##   Those you have or can get, by the names that kinfonds supplies prints.
#   folders: [letter folder]
#   boxes: [letter document box, half letter document box]
##   Boxes of your own, measured inside: width and height of what stands in it, then depth from the first to the last.
#   own:
#     - name: Biscuit tin
#       inside: 24 x 18 x 7 cm
##       Whether its content lies flat, one on the other, and what goes into it: papers, oversize, volumes,
##       photographs (negatives and slides), glass, discs, film, tapes, textiles, objects, rolls.
#       flat: true
#       for: [objects]
##   How thick the content of a folder may be, in millimetres, and in what extent is stated: feet, metres, both.
#   thickness: 19
#   measure: both

## Words of your own for kinfonds check, with what they point to: a danger (mould, medicines …), private matter (health,
## bank …), a title that says nothing (vague), or something to be done before boxing (unfold, unpin …).
# check:
#   words:
#     - words: [cable grease]
#       mean: chemicals
##   Answers to findings, by the rule that the report names: they are then quiet, and the reason is kept. "of" is the
##   number or the title of a thing, or a reference code; without it, everything the rule says is answered.
#   answers:
#     - rule: danger.ammunition
#       of: Shell case made into a vase
#       because: The county police looked at it in 2024; it is empty.

## What to say of single groups, under the titles that kinfonds arrange shows. Each part may be left out.
# groups:
#   Correspondence:
#     title: Letters from the ferry
#     scope: Letters that Ada and Nils wrote to each other while he was at sea.
#     arrangement: By date; the undated ones are last.
#     history: Ada tied them in bundles, one for each voyage.
#     access:
#       statement: Closed, for they speak of people who are alive.
#       until: 2040
`;
}

/** A text behind the colon of an entry; between quotation marks, where no sign in it means anything to YAML. */
function filled(text: string | undefined): string {
  return text === undefined ? '' : ` ${JSON.stringify(text)}`;
}
