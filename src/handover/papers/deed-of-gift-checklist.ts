import type { Summary } from '../summary.ts';
import { heading, lines, NO_ADVICE, type Paper, text, ticks, withArticle } from './paper.ts';

/**
 * What to settle before a collection changes hands. The points are common practice of archives and of those who advise
 * families who give to them.
 */
export function deedOfGiftChecklist({ title, code, restricted, copies }: Summary): Paper {
  return {
    title: `Before the deed of gift is signed: ${title}`,
    blocks: [
      text(
        `Most archives have a form of their own for a gift or a loan. Go through these points together before anybody signs it, and see that what you agree on stands in it. It is about ${withArticle(title)}, reference code ${code}.`,
      ),
      NO_ADVICE,
      heading('Whose it is'),
      ticks(
        'Everybody who owns a part of it is known, and agrees: brothers and sisters, cousins, other heirs.',
        'Nothing in it is borrowed, and nothing belongs to a firm, a parish, a club or a public office.',
        'Whoever signs may do so: as owner, as executor, or with a paper that says so.',
        'It is clear whether this is a gift, a sale, a bequest, or a loan, and for a loan how it ends and who pays then.',
        'It is clear what belongs to it. The inventory is fastened to the deed.',
      ),
      heading('Rights'),
      ticks(
        'To own a letter is not to own the right to publish it: that is with whoever wrote it, or their heirs. It is clear whose rights the family has, and whose it has not.',
        'It is clear whether those rights go to the archive, stay with the family, or are given up for everybody.',
        'Photographers, newspapers and firms may have rights of their own; such pieces are named.',
        'It is clear whether the archive may copy all of it, put it on the web, and lend it for exhibitions.',
        'It is clear how it is to be called when somebody quotes from it.',
      ),
      heading('Restrictions'),
      ticks(
        `Each restriction has a reason, an end, and somebody who may lift it. ${sayRestricted(restricted.length)}`,
        'Records of people who may be living are named: health, school, money, adoption, court. The law may close them, whatever is agreed.',
        'It is clear who may see what is closed: the family, nobody, or researchers who sign for it.',
        'It is clear who answers when somebody asks that a thing be closed or taken down.',
      ),
      heading('What is not kept'),
      ticks(
        'The archive says what it would not keep: doubles, empty forms, what is past saving, what is somebody else’s.',
        'It is clear what becomes of that: it comes back to the family, goes to another archive, or is destroyed.',
        'It is clear by when it comes back, who fetches it, and who pays.',
        'The same is agreed for what the archive might part with in later years.',
      ),
      heading('Care and costs'),
      ticks(
        'Mould, insects, old film, medicines, weapons and the like are named, and who looks at them first is agreed.',
        'It is clear who packs, who carries, and who bears the loss if something happens on the way.',
        'It is clear what the archive will do, and about when: boxes, a finding aid, copies; and whether it asks for money for it.',
        'Whoever wants to deduct the gift from taxes has asked somebody who knows about it, before signing: often an appraisal is needed that neither side may make itself.',
      ),
      heading('Digital copies'),
      ticks(
        copies.length === 0
          ? 'It is clear whether the archive will make digital copies, and whether the family gets them.'
          : 'It is clear what the archive may do with the digital copies, and that a copy does not stand for its original.',
        'Pictures may tell within the file where they were made. It is clear that this is taken out before they are published.',
        'Both sides have verified the package after it was copied, and the family keeps a copy of its own.',
      ),
      heading('At the end'),
      ticks(
        'Both sides have a signed copy of the deed with the inventory.',
        'The family knows whom to ask later, and the archive whom in the family.',
        'It is clear what happens if the archive closes or moves.',
      ),
      lines('Gone through on', 'For the family', 'For the archive'),
    ],
  };
}

function sayRestricted(number: number): string {
  if (number === 0) return 'None is noted in the list.';
  return number === 1 ? 'One is noted in the finding aid.' : `${number} are noted in the finding aid.`;
}
