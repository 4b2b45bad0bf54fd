import { expect, test } from 'vitest';
import { PUBLISHED } from '../../src/xml/published.ts';
import { validateXml } from '../../src/xml/validate.ts';

test.each([
  ['<boat xmlns="urn:ferry"/>', 'boat', 'in the namespace urn:ferry.'],
  ['\n<boat/>', 'boat', 'in no namespace.'],
  // The name is right and the namespace is not.
  ['<eac-cpf xmlns="urn:ferry"/>', 'eac-cpf', 'in the namespace urn:ferry.'],
])(
  'of a file that begins with %j it is said what it is, and what could be checked',
  async (xml, name, space) => {
    const { valid, format, messages } = await validateXml(Buffer.from(xml), 'boat.xml', { env: {} });
    expect({ valid, format }).toEqual({ valid: false, format: undefined });
    expect(messages).toMatchObject([{ line: xml.startsWith('\n') ? 2 : 1, path: `/${name}`, element: name }]);
    const says = messages[0]?.says ?? '';
    expect(says).toContain(`The outermost element is <${name}> ${space}`);
    for (const known of PUBLISHED)
      expect(says).toContain(`<${known.root}> in the namespace ${known.namespace} (${known.format})`);
  },
);
