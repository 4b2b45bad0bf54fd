import type { Finding, Weight } from '../catalogue/finding.ts';

/** The last line of a report: ready to be handed over, or what still stands in the way. */
export function verdict(findings: readonly Finding[]): string {
  const of = (weight: Weight) => findings.filter((finding) => finding.weight === weight).length;
  const [musts, shoulds, cautions] = [of('must'), of('should'), of('caution')];
  const care = cautions === 0 ? '' : ` ${sayFindings(cautions)} ${cautions === 1 ? 'asks' : 'ask'} for care.`;
  if (musts > 0) {
    return `Not ready to be handed over: ${musts === 1 ? 'one finding stands' : `${musts} findings stand`} in the way.${care}`;
  }
  if (shoulds > 0) {
    return `Nearly ready to be handed over: ${shoulds === 1 ? 'one finding' : `${shoulds} findings`} should be mended or answered first.${care}`;
  }
  return `Ready to be handed over.${care}`;
}

/** How many findings there are, as a sentence begins. */
export const sayFindings = (count: number): string => (count === 1 ? 'One finding' : `${count} findings`);
