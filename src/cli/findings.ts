import { type Finding, sayPlace, type Weight } from '../catalogue/finding.ts';
import { type Colour, coloured } from './colour.ts';

const COLOUR: Record<Weight, Colour> = {
  must: 'red',
  should: 'yellow',
  consider: 'blue',
  caution: 'magenta',
};

/** Prints findings as sentences: the weight and the place, what was found; below it what to do, once for all alike. */
export function printFindings(findings: readonly Finding[], stream: NodeJS.WriteStream): void {
  findings.forEach(({ weight, place, found, advice, source }, index) => {
    const where = sayPlace(place);
    stream.write(
      `${coloured(weight, COLOUR[weight], stream)}  ${where === '' ? '' : `${where}: `}${found}\n`,
    );
    if (advice !== undefined && findings[index + 1]?.advice !== advice) {
      stream.write(`        ${advice}${source === undefined ? '' : ` (${source})`}\n`);
    }
  });
}

/** How many findings there are of each weight, in words: "2 must, 1 consider". */
export function countFindings(findings: readonly Finding[]): string {
  const weights = Object.keys(COLOUR) as Weight[];
  return weights
    .map((weight) => ({ weight, count: findings.filter((finding) => finding.weight === weight).length }))
    .filter(({ count }) => count > 0)
    .map(({ weight, count }) => `${count} ${weight}`)
    .join(', ');
}
