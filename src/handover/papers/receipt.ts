import { foldersIn, rowsByBox, sayCount, sayTotals } from '../inventory-papers.ts';
import { sayNotSettled } from '../say-not-settled.ts';
import type { Summary } from '../summary.ts';
import { heading, lines, NO_ADVICE, type Paper, text, ticks, withArticle } from './paper.ts';

/** A receipt for what changes hands at the door, before anything is agreed for good. */
export function receipt(summary: Summary): Paper {
  const { title, code, giver, recipient, rows, copies } = summary;
  const there = copies.filter(({ name }) => name !== undefined).length;
  const boxes = [...rowsByBox(rows)].map(([name, content]) => {
    const folders = content.reduce((sum, { folder }) => sum + foldersIn(folder), 0);
    const counted = content.flatMap(({ things }) => things ?? []);
    const things = counted.length === 0 ? {} : { things: counted.reduce((sum, one) => sum + one, 0) };
    const isPart = counted.length < content.length;
    return [
      name,
      folders === 0 ? '' : `${folders}`,
      sayCount({ ...things, approximate: isPart || content.some(({ approximate }) => approximate) }),
    ];
  });
  return {
    title: `Receipt: ${title}`,
    blocks: [
      text(
        `Received today from ${giver.name} by ${recipient?.name ?? 'the archive named below'}: ${withArticle(title)}, reference code ${code}, as the inventory lists it: ${sayTotals(rows, there)}.`,
      ),
      {
        kind: 'table',
        headings: ['Box', 'Folders', 'Things'],
        rows: boxes,
        ticked: true,
      },
      text('Numbers that are missing here do not belong to what is handed over.'),
      ...sayNotSettled(summary).map(text),
      text(
        'This receipt says that the things have arrived. It does not say to whom they belong from now on: that is for the deed of gift or of loan. Until it is signed, the archive keeps the things for their owner, gives none of them away and throws none away.',
      ),
      ticks(
        'A deed has been signed.',
        'A deed is still to be signed.',
        ...(there > 0 ? ['The package of digital files was verified after it was copied.'] : []),
        'The boxes were opened and compared with the inventory.',
        'The boxes were counted and not opened.',
      ),
      heading('Signed'),
      lines(
        'Missing, damaged or added',
        'Place and day',
        'Handed over by',
        'Signature',
        'Received by, and for whom',
        'Signature',
      ),
      NO_ADVICE,
    ],
  };
}
