import { describe, expect, it } from 'vitest';
import { validateXml } from '../../src/xml/validate.ts';
import { describeWithSchemas } from '../support/outside.ts';
import { SMALL_DCTERMS, SMALL_OAI_DC, withChange } from '../support/small-dublin-core.ts';

// Sources: oai_dc.xsd of 2002-12-19; dcterms.xsd of 2008-02-11.
describeWithSchemas('the published schemas of Dublin Core', (schemas) => {
  it('are what `validate` uses, told by namespace and root', async () => {
    const places = { folder: schemas, env: {} };
    const said = async (xml: string) => validateXml(Buffer.from(xml), 'a.xml', places);
    expect(await said(SMALL_OAI_DC)).toMatchObject({
      valid: true,
      format: 'Dublin Core',
      schema: { kind: 'published' },
    });
    expect(await said(SMALL_DCTERMS)).toMatchObject({
      valid: true,
      format: 'DCMI terms',
      schema: { kind: 'published' },
    });
    const wrong = await said(withChange(SMALL_DCTERMS, '>1936-05-14<', '>1936-02-30<'));
    expect(wrong).toMatchObject({
      valid: false,
      messages: [{ line: 16, path: '/records/record/dcterms:created[1]' }],
    });
    expect((await said(withChange(SMALL_OAI_DC, /dc:source/g, 'dc:origin'))).messages).toMatchObject([
      { line: 14 },
    ]);
  });
});
describe('validate, where no published schema is at hand', () => {
  it('uses the profiles', async () => {
    const nowhere = { env: {}, home: '/nonexistent' };
    for (const xml of [SMALL_OAI_DC, SMALL_DCTERMS]) {
      const result = await validateXml(Buffer.from(xml), 'a.xml', nowhere);
      expect(result).toMatchObject({ valid: true, schema: { kind: 'profile' } });
    }
    const untitled = withChange(SMALL_OAI_DC, /<dc:title>.*<\/dc:title>/, '');
    expect(await validateXml(Buffer.from(untitled), 'a.xml', nowhere)).toMatchObject({
      valid: false,
    });
  });
});
