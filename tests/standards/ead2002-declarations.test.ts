import { describe, expect, it } from 'vitest';
import { PROFILE, publishedXsd } from '../support/ead2002-schemas.ts';
import { describeWithSchemas } from '../support/outside.ts';
import { excessText } from '../support/pattern-model.ts';
import { declarationsOf } from '../support/schema-declarations.ts';
import { excess } from '../support/schema-inclusion.ts';

// Source: EAD 2002, ead.xsd and xlink.xsd of 2021-04-12, Society of American Archivists and Library of Congress.
describeWithSchemas('the declarations of the EAD 2002 profile against those published', (schemas) => {
  const profile = () => declarationsOf(PROFILE, 'ead');
  const published = () => declarationsOf(publishedXsd(schemas), 'ead');

  it('let in no child, order of children, attribute, value or text that the published schema does not', () => {
    const { problems, compared } = excess(profile(), published());
    expect(problems).toEqual([]);
    // So that an empty comparison is noticed: the profile has some ninety pairs of types.
    expect(compared).toBeGreaterThan(80);
  });

  it('are compared by a measure that finds a schema larger than its part', () => {
    const { problems } = excess(published(), profile());
    for (const problem of [
      ' lets in a child frontmatter',
      '/eadheader lets in an attribute encodinganalog',
      '/eadheader lets in more values of findaidstatus',
      '/eadheader/filedesc lets in the children titlestmt',
      '/archdesc lets in a child runner',
      '/archdesc/did/unitdate lets in more values of normal',
      '/archdesc/did/unitdate lets type be missing',
      '/archdesc/did/dao lets in an attribute xlink:show',
      '/archdesc/did/dao lets xlink:href be missing',
      '/archdesc/did/dao lets in more values of xlink:role',
      '/archdesc/did/origination lets in text',
      '/archdesc/dsc lets in the children (none)',
    ]) {
      expect(problems).toContain(problem);
    }
  });
});

describe('the comparison of patterns', () => {
  it.each([
    ['[0-9]{4}', '[0-9]{4}(-[0-9]{2})?', undefined],
    ['(19|20)[0-9]{2}', '[0-2][0-9]{3}', undefined],
    ['[a-c]', 'a|b', 'c'],
    ['[0-9]{4}(-[0-9]{2})?', '[0-9]{4}', '0000-00'],
    ['a{1,3}', 'a{1,2}', 'aaa'],
    ['a+', 'a*', undefined],
    ['a*', 'a+', ''],
  ])('%s within %s: %j', (narrow, wide, expected) => {
    expect(excessText(narrow, wide)).toBe(expected);
  });

  it('reads nothing that it does not know', () => {
    for (const pattern of ['.', '\\d', '[^a]', 'a)', '\\p{L}'])
      expect(() => excessText(pattern, 'a')).toThrow();
  });
});
