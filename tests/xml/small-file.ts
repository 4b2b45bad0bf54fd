import type { FoundSchema } from '../../src/xml/schemas.ts';
import type { Validation } from '../../src/xml/validation.ts';
import { validateAgainst } from '../support/validate-against.ts';

const XSD = `<xs:schema xmlns:xs="http://www.w3.org/2001/XMLSchema" xmlns="http://ead3.archivists.org/schema/"
  targetNamespace="http://ead3.archivists.org/schema/" elementFormDefault="qualified">
  <xs:element name="ead">
    <xs:complexType>
      <xs:sequence><xs:element name="archdesc" type="Unit"/></xs:sequence>
    </xs:complexType>
  </xs:element>
  <xs:complexType name="Unit">
    <xs:sequence>
      <xs:element name="did">
        <xs:complexType>
          <xs:sequence><xs:element name="unittitle" type="xs:string"/></xs:sequence>
        </xs:complexType>
      </xs:element>
      <xs:element name="dsc" minOccurs="0">
        <xs:complexType>
          <xs:sequence><xs:element name="c" type="Unit" maxOccurs="unbounded"/></xs:sequence>
        </xs:complexType>
      </xs:element>
    </xs:sequence>
    <xs:attribute name="level" type="xs:NMTOKEN"/>
  </xs:complexType>
</xs:schema>`;

/** A schema of a few elements in the namespace of EAD3, so that a test needs no schema from elsewhere. */
export const SMALL_SCHEMA: FoundSchema = {
  format: 'EAD3',
  name: 'a small schema for tests',
  version: '1',
  kind: 'profile',
  path: 'small.xsd',
  main: 'small.xsd',
  files: new Map([['small.xsd', Buffer.from(XSD)]]),
  aliases: new Map(),
  fingerprint: 'small',
};

/** A file that is valid by it, with a document type (or the like) in its second line. */
export function smallEad3({ type = '', title = 'Letters' }: { type?: string; title?: string } = {}): string {
  return `<?xml version="1.0" encoding="UTF-8"?>
${type}
<ead xmlns="http://ead3.archivists.org/schema/">
  <archdesc level="collection"><did><unittitle>${title}</unittitle></did></archdesc>
</ead>
`;
}

export const SMALL_EAD3 = smallEad3();

/** What comes of holding bytes against the small schema. */
export function validateSmall(file: string | Uint8Array): Promise<Validation> {
  return validateAgainst(typeof file === 'string' ? Buffer.from(file) : file, 'stranger.xml', SMALL_SCHEMA);
}

/** All that the messages say. */
export const said = ({ messages }: Validation): string => messages.map(({ says }) => says).join('\n');
