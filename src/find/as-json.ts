import type { Answer } from './answer.ts';
import { sayWhereabouts } from './whereabouts.ts';

/** The answer for other programs. Every field is always there, with null or an empty list where there is nothing. */
export function asJson({ found, unit, hits, proposals, withoutFilters, notThere }: Answer) {
  return {
    found,
    unit:
      unit === undefined
        ? null
        : {
            referenceCode: unit.referenceCode,
            title: unit.title,
            dates: unit.dates ?? null,
            lies: unit.lies ?? null,
          },
    hits: hits.map((hit) => ({
      referenceCode: hit.referenceCode,
      title: hit.title,
      dates: hit.dates ?? null,
      years: hit.years ?? null,
      people: hit.persons,
      lies: sayWhereabouts(hit),
      boxes: hit.boxes,
      folder: hit.folder ?? null,
      position: hit.position ?? null,
      restricted: hit.restricted ?? null,
      reasons: hit.reasons.map(({ field, typed, found: there, within }) => ({
        field,
        typed,
        found: there,
        within: within ?? null,
      })),
      lacks: hit.lacks,
    })),
    proposals,
    withoutFilters: withoutFilters ?? null,
    notThere: { box: notThere?.box ?? null, kind: notThere?.kind ?? null },
  };
}
