import type { Finding, Weight } from '../catalogue/finding.ts';

/** The last line of a report: ready to be handed over, or what still stands in the way. */
export function verdict(findings: readonly Finding[]): string {
  const of = (weight: Weight) => findings.filter((finding) => finding.weight === weight).length;
  const [musts, shoulds, cautions] = [of('must'), of('should'), of('caution')];
  const care =
    cautions === 0
      ? ''
      : ` ${cautions === 1 ? 'One thing needs' : `${cautions} matters need`} care in handling.`;
  if (musts > 0) {
    return `Not ready to be handed over: ${musts === 1 ? 'one thing stands' : `${musts} things stand`} in the way.${care}`;
  }
  if (shoulds > 0) {
    return `Nothing stands in the way of handing it over, but ${shoulds === 1 ? 'one thing' : `${shoulds} things`} should be put right first.${care}`;
  }
  return `Ready to be handed over.${care}`;
}
