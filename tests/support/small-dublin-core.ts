/** A record in simple Dublin Core written by hand that uses every element; invented. */
export const SMALL_OAI_DC = `<?xml version="1.0" encoding="UTF-8"?>
<oai_dc:dc xmlns:oai_dc="http://www.openarchives.org/OAI/2.0/oai_dc/" xmlns:dc="http://purl.org/dc/elements/1.1/">
  <dc:title>Letters to Ada</dc:title>
  <dc:creator>Quill, Nils</dc:creator>
  <dc:subject>Ferries</dc:subject>
  <dc:subject>Quill, Ada</dc:subject>
  <dc:description>On the flood.</dc:description>
  <dc:publisher>Heronsford Historical Society</dc:publisher>
  <dc:contributor>Rook, Cora</dc:contributor>
  <dc:date>1936/1938</dc:date>
  <dc:type>Text</dc:type>
  <dc:format>4 letters</dc:format>
  <dc:identifier>QF/1/2</dc:identifier>
  <dc:source>The originals are with the family.</dc:source>
  <dc:language>nor</dc:language>
  <dc:relation>QF/1</dc:relation>
  <dc:coverage>Sallow Reach</dc:coverage>
  <dc:rights>Open.</dc:rights>
</oai_dc:dc>
`;

/** Records in DCMI terms written by hand that use every term and encoding scheme of the profile; invented. */
export const SMALL_DCTERMS = `<?xml version="1.0" encoding="UTF-8"?>
<records xmlns="urn:kinfonds:dcterms" xmlns:dcterms="http://purl.org/dc/terms/" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
  <record>
    <dcterms:title>Letters to Ada</dcterms:title>
    <dcterms:creator>Quill, Nils</dcterms:creator>
    <dcterms:subject>Ferries</dcterms:subject>
    <dcterms:subject xsi:type="dcterms:LCSH">Floods</dcterms:subject>
    <dcterms:subject xsi:type="dcterms:MESH">Drowning</dcterms:subject>
    <dcterms:subject xsi:type="dcterms:DDC">386.6</dcterms:subject>
    <dcterms:subject xsi:type="dcterms:LCC">HE5751</dcterms:subject>
    <dcterms:subject xsi:type="dcterms:UDC">656.6</dcterms:subject>
    <dcterms:description>On the flood.</dcterms:description>
    <dcterms:abstract>Four letters.</dcterms:abstract>
    <dcterms:publisher>Heronsford Historical Society</dcterms:publisher>
    <dcterms:contributor>Rook, Cora</dcterms:contributor>
    <dcterms:created xsi:type="dcterms:W3CDTF">1936-05-14</dcterms:created>
    <dcterms:created>the year of the flood</dcterms:created>
    <dcterms:type xsi:type="dcterms:DCMIType">Text</dcterms:type>
    <dcterms:type>letters</dcterms:type>
    <dcterms:format>Damp.</dcterms:format>
    <dcterms:format xsi:type="dcterms:IMT">image/tiff</dcterms:format>
    <dcterms:extent>4 letters</dcterms:extent>
    <dcterms:medium>paper</dcterms:medium>
    <dcterms:identifier>QF/1/2</dcterms:identifier>
    <dcterms:identifier xsi:type="dcterms:URI">copies/a%20b.tif</dcterms:identifier>
    <dcterms:bibliographicCitation>Quill family papers, letters.</dcterms:bibliographicCitation>
    <dcterms:source>The originals are with the family.</dcterms:source>
    <dcterms:language xsi:type="dcterms:ISO639-2">nor</dcterms:language>
    <dcterms:language xsi:type="dcterms:ISO639-3">nob</dcterms:language>
    <dcterms:relation>Log books of the ferry.</dcterms:relation>
    <dcterms:isPartOf>QF/1</dcterms:isPartOf>
    <dcterms:hasFormat xsi:type="dcterms:URI">https://example.org/a?b=1#c</dcterms:hasFormat>
    <dcterms:isReferencedBy>The Last Ferry.</dcterms:isReferencedBy>
    <dcterms:spatial>Sallow Reach</dcterms:spatial>
    <dcterms:spatial xsi:type="dcterms:TGN">Norway</dcterms:spatial>
    <dcterms:temporal xsi:type="dcterms:Period">name=1936-1938; start=1936; end=1938; scheme=W3C-DTF;</dcterms:temporal>
    <dcterms:rights>Ask the heirs.</dcterms:rights>
    <dcterms:accessRights>Open.</dcterms:accessRights>
    <dcterms:rightsHolder>Quill, Tom</dcterms:rightsHolder>
    <dcterms:provenance>Kept in the loft.</dcterms:provenance>
    <dcterms:accrualPolicy>None expected.</dcterms:accrualPolicy>
  </record>
</records>
`;

/** One of them with one place changed. @throws Error where the place is not found, so that no test passes in vain */
export function withChange(xml: string, place: string | RegExp, instead: string): string {
  const changed = xml.replace(place, instead);
  if (changed === xml) throw new Error(`The record has no place ${place}`);
  return changed;
}
