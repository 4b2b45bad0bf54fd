import { expect, it } from 'vitest';
import { PROFILE, publishedXsd } from '../support/eac-cpf-schemas.ts';
import { describeWithSchemas } from '../support/outside.ts';
import { declarationsOf } from '../support/schema-declarations.ts';
import { excess } from '../support/schema-inclusion.ts';

// Source: EAC-CPF 2.0, eac.xsd as published by the Society of American Archivists and the Staatsbibliothek zu Berlin.
describeWithSchemas('the declarations of the EAC-CPF profile against those published', (schemas) => {
  const profile = () => declarationsOf(PROFILE, 'eac');
  const published = () => declarationsOf(publishedXsd(schemas), 'eac');

  it('let in no child, order of children, attribute, value or text that the published schema does not', () => {
    const { problems, compared } = excess(profile(), published());
    expect(problems).toEqual([]);
    // So that an empty comparison is noticed: the profile has some forty pairs of types.
    expect(compared).toBeGreaterThan(35);
  });

  it('are compared by a measure that finds a schema larger than its part', () => {
    const { problems } = excess(published(), profile());
    for (const problem of [
      '/control lets in a child otherRecordId',
      '/control lets in more values of languageEncoding',
      '/control lets in more values of maintenanceStatus',
      '/control lets publicationStatus be missing',
      '/control/maintenanceHistory/maintenanceEvent/eventDateTime lets standardDateTime be missing',
      '/cpfDescription lets in a child alternativeSet',
      '/cpfDescription/identity/nameEntry lets status be missing',
      '/cpfDescription/description lets in the children (none)',
      '/cpfDescription/description/existDates/dateRange/fromDate lets in more values of certainty',
      '/cpfDescription/relations/relation lets in the children targetEntity',
    ]) {
      expect(problems).toContain(problem);
    }
  });
});
