import { expect, it } from 'vitest';
import { PROFILE, publishedXsd } from '../support/ead3-schemas.ts';
import { describeWithSchemas } from '../support/outside.ts';
import { declarationsOf, type ElementType } from '../support/schema-declarations.ts';
import { excess } from '../support/schema-inclusion.ts';

// Source: EAD3 1.1.1, ead3.xsd as published by the Society of American Archivists.
describeWithSchemas('the declarations of the EAD3 profile against those published', (schemas) => {
  const profile = () => declarationsOf(PROFILE, 'ead');
  const published = () => declarationsOf(publishedXsd(schemas), 'ead');

  it('let in no child, order of children, attribute, value or text that the published schema does not', () => {
    const { problems, compared } = excess(profile(), published());
    expect(problems).toEqual([]);
    // So that an empty comparison is noticed: the profile has a hundred pairs of types.
    expect(compared).toBeGreaterThan(90);
  });

  it('are compared by a measure that finds a schema larger than its part', () => {
    const { problems } = excess(published(), profile());
    expect(problems).toContain('/control lets in a child otherrecordid');
    expect(problems).toContain('/control lets in more values of langencoding');
    expect(problems).toContain('/control/maintenancestatus lets in text');
    expect(problems).toContain('/archdesc/dsc lets in the children (none)');
    expect(problems).toContain('/archdesc/dsc lets dsctype be missing');
    expect(problems).toContain('/control/filedesc/titlestmt lets in the children titleproper, titleproper');
  });

  it.each<[string, Partial<ElementType>, string]>([
    ['text', { text: true }, ' lets in text'],
    [
      'an attribute',
      { attributes: new Map([['colour', { required: false, values: profileValues('token') }]]) },
      ' lets in an attribute colour',
    ],
    [
      'a value',
      { attributes: new Map([['base', { required: false, values: profileValues('token') }]]) },
      ' lets in more values of base',
    ],
  ])('are compared by a measure that finds %s too much', (_, more, problem) => {
    expect(excess({ ...profile(), ...more }, published()).problems).toContain(problem);
  });
});

function profileValues(base: string) {
  return { base, enumeration: undefined, largest: undefined, union: undefined };
}
