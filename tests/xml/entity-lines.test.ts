import { expect, test } from 'vitest';
import { smallEad3, validateSmall } from './small-file.ts';

// The document type begins in line 2 of the file.
const TYPE = `<!DOCTYPE ead [
<!ENTITY charter   SYSTEM "charter.txt">
<!ENTITY river "the Quill">

<!ENTITY
  chart PUBLIC "-//Quill//TEXT Chart//EN" "chart.txt">
<!ENTITY   %   chapter SYSTEM "chapter.ent">
<!ENTITY charter SYSTEM "another.txt">
<!NOTATION jpeg SYSTEM "image/jpeg">
<!ENTITY picture SYSTEM "ferry.jpg" NDATA jpeg>
]>`;

test('each entity whose text is in another file is told at the line in which it is declared', async () => {
  const { valid, messages } = await validateSmall(smallEad3({ type: TYPE }));
  expect(valid).toBe(false);
  const told = messages.map(({ line, says }) => [line, says.split(' stands for')[0], says.includes('.txt')]);
  // XML 1.0, 4.2: of two declarations of one name the first is binding. A picture is no text (4.2.2).
  expect(told.toSorted(([a], [b]) => Number(a) - Number(b))).toEqual([
    [3, 'The entity charter', true],
    [6, 'The entity chart', true],
    [8, 'The entity chapter', false],
  ]);
});
