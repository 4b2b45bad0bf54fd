import { addTo } from '../catalogue/add-to.ts';
import { type Finding, sayPlace, WEIGHTS, type Weight } from '../catalogue/finding.ts';
import { type Colour, coloured } from './colour.ts';
import { printable } from './printable.ts';

const COLOUR: Record<Weight, Colour> = {
  must: 'red',
  should: 'yellow',
  consider: 'blue',
  caution: 'magenta',
};

/** So many findings of one rule are shown; the rest are counted. */
const MOST = 20;

/**
 * Prints findings as sentences, those of one rule together: the weight and the place, what was found; below each, or
 * once below all where they have it in common, what to do.
 * @param named whether the rule is named, by which collection.yaml answers it
 */
export function printFindings(findings: readonly Finding[], stream: NodeJS.WriteStream, named = true): void {
  for (const alike of byRule(findings)) {
    const shown = alike.slice(0, MOST);
    shown.forEach(({ rule, weight, place, found, advice, source }, index) => {
      const where = sayPlace(place);
      stream.write(
        `${coloured(weight, COLOUR[weight], stream)}  ${printable(`${where === '' ? '' : `${where}: `}${found}`)}\n`,
      );
      const last = index === shown.length - 1;
      if (last && alike.length > MOST)
        stream.write(`        … and ${alike.length - MOST} more like this; --json shows all.\n`);
      if (advice !== undefined && (last || shown[index + 1]?.advice !== advice)) {
        stream.write(`        ${printable(advice)}${source === undefined ? '' : ` (${source})`}\n`);
      }
      if (last && named) stream.write(`        rule: ${rule}\n`);
    });
  }
}

function byRule(findings: readonly Finding[]): Finding[][] {
  const rules = new Map<string, Finding[]>();
  for (const finding of findings) {
    addTo(rules, finding.rule, finding);
  }
  return [...rules.values()];
}

/** How many findings there are of each weight, in words: "2 must, 1 consider". */
export function countFindings(findings: readonly Finding[]): string {
  return WEIGHTS.map((weight) => ({
    weight,
    count: findings.filter((finding) => finding.weight === weight).length,
  }))
    .filter(({ count }) => count > 0)
    .map(({ weight, count }) => `${count} ${weight}`)
    .join(', ');
}
