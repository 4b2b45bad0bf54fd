/** A finding aid written by hand that uses every element and attribute of the profile; invented. */
export const SMALL_EAD2002 = `<?xml version="1.0" encoding="UTF-8"?>
<ead xmlns="urn:isbn:1-931666-22-9" xmlns:xlink="http://www.w3.org/1999/xlink">
  <eadheader countryencoding="iso3166-1" dateencoding="iso8601" langencoding="iso639-2b" repositoryencoding="iso15511" scriptencoding="iso15924" findaidstatus="approved">
    <eadid countrycode="US" mainagencycode="US-HeHS">QF</eadid>
    <filedesc>
      <titlestmt>
        <titleproper>The Quill family papers</titleproper>
        <subtitle>A finding aid</subtitle>
        <author>Nora Quill</author>
      </titlestmt>
      <editionstmt><edition>Second edition</edition></editionstmt>
      <publicationstmt>
        <publisher>Heronsford Historical Society</publisher>
        <date normal="2026">2026</date>
        <address><addressline>1 Landing Lane</addressline><addressline>Heronsford</addressline></address>
        <p><extref xlink:type="simple" xlink:href="https://example.org/cc0">CC0 1.0 Universal</extref></p>
        <p>Anyone may copy this description.</p>
      </publicationstmt>
      <notestmt>
        <note type="maintenance agency"><p>Heronsford Historical Society, Mill Lane, Heronsford</p></note>
        <note type="sources"><p>What Edvard Quill told in 1999.</p></note>
      </notestmt>
    </filedesc>
    <profiledesc>
      <creation>Described by Nora Quill, <date normal="2026-05-14">2026 May 14</date>, from the family's list.</creation>
      <langusage><language langcode="eng" scriptcode="Latn">English</language></langusage>
      <descrules>Describing Archives: A Content Standard (<abbr>DACS</abbr>)</descrules>
    </profiledesc>
    <revisiondesc>
      <change><date normal="2026-06">2026 June</date><item>Revised by Nora Quill.</item></change>
    </revisiondesc>
  </eadheader>
  <archdesc id="top" level="otherlevel" otherlevel="household">
    <did>
      <unitid countrycode="US" repositorycode="US-HeHS">QF</unitid>
      <unitid type="accession">1999-3</unitid>
      <unittitle>Quill family papers</unittitle>
      <unitdate type="inclusive" certainty="approximate" normal="1891/1974">approximately 1891-1974</unitdate>
      <unitdate type="bulk" normal="1902-05/1960">bulk 1902 May-1960</unitdate>
      <physdesc label="part">
        <extent type="spaceoccupied">approximately 1.25 linear feet</extent>
        <physfacet>paper</physfacet>
        <dimensions>38 cm high</dimensions>
      </physdesc>
      <physdesc>Some of it damp.</physdesc>
      <origination><famname role="creator" source="local" authfilenumber="https://example.org/quill">Quill family</famname></origination>
      <origination><persname>Quill, Ada, 1902-1988</persname></origination>
      <origination><corpname>Quill's Ferry</corpname></origination>
      <repository>
        <corpname>Heronsford Historical Society</corpname>
        <address><addressline>1 Landing Lane</addressline></address>
      </repository>
      <abstract>Papers of three generations at a ferry.</abstract>
      <langmaterial><language langcode="nor" scriptcode="Latn">Norwegian</language>, <language langcode="eng">English</language>. Mostly English.</langmaterial>
      <container type="oversize-box" label="oversize box" id="box1">1</container>
      <container type="folder" parent="box1">2</container>
      <physloc>Shelf 4</physloc>
      <daogrp xlink:type="extended">
        <daoloc xlink:type="locator" xlink:href="copies/a.tif" xlink:role="derived" xlink:title="Front"><daodesc><p>Scan.</p></daodesc></daoloc>
        <daoloc xlink:type="locator" xlink:href="https://example.org/b" xlink:role="borndigital"/>
      </daogrp>
      <note><p>Date: The year is a guess.</p></note>
    </did>
    <bioghist>
      <p>The Quills kept the ferry.</p><p>And the orchard.</p>
      <bioghist><head>Quill, Ada</head><p>She taught.</p></bioghist>
    </bioghist>
    <custodhist><p>Kept in the loft.</p></custodhist>
    <acqinfo><p>Given in 1999.</p></acqinfo>
    <scopecontent><p>Letters and accounts.</p></scopecontent>
    <appraisal><p>Duplicates were given back.</p></appraisal>
    <accruals><p>None expected.</p></accruals>
    <arrangement><p>By kind.</p></arrangement>
    <accessrestrict type="restricted"><p>Open, save one folder.</p><p>Restricted until <date normal="2040">2040</date>.</p><legalstatus>Deed of gift.</legalstatus></accessrestrict>
    <userestrict><p>Ask the society.</p></userestrict>
    <phystech type="physical characteristics"><p>Brittle.</p></phystech>
    <phystech type="technical requirements"><p>A projector.</p></phystech>
    <otherfindaid><p>A card index.</p></otherfindaid>
    <originalsloc><p>With the family.</p></originalsloc>
    <altformavail><p>Copies in the library.</p></altformavail>
    <relatedmaterial><p>Ferry company records.</p></relatedmaterial>
    <separatedmaterial><p>The quilt.</p></separatedmaterial>
    <bibliography><p>A history of the ferry.</p></bibliography>
    <odd><head>Note</head><p>The loft leaked.</p></odd>
    <prefercite><p>Quill family papers, box and folder.</p></prefercite>
    <processinfo><p>Sorted in a week.</p></processinfo>
    <controlaccess>
      <persname>Quill, Ada</persname>
      <famname>Quill family</famname>
      <corpname>Quill's Ferry</corpname>
      <geogname source="local">Heronsford</geogname>
      <subject>Ferries</subject>
      <genreform>letters</genreform>
      <occupation>ferrymen</occupation>
      <function>ferrying</function>
      <title>The Heron</title>
    </controlaccess>
    <dsc type="combined">
      <c id="c1" level="otherlevel" otherlevel="bundle">
        <did><unittitle>Letters</unittitle></did>
        <accessrestrict><legalstatus>On loan.</legalstatus></accessrestrict>
        <c id="c2" level="item">
          <did>
            <unittitle>Letter to Ada</unittitle>
            <unitdate type="inclusive">undated</unitdate>
            <dao xlink:type="simple" xlink:href="copies/letter.pdf" xlink:role="unknown" xlink:title="Letter"><daodesc><p>Two pages.</p></daodesc></dao>
          </did>
        </c>
      </c>
    </dsc>
  </archdesc>
</ead>
`;

/**
 * The same with one place changed.
 * @throws Error where the place is not found, so that no test passes for a change that was never made
 */
export function smallEad2002With(place: string | RegExp, instead: string): string {
  const changed = SMALL_EAD2002.replace(place, instead);
  if (changed === SMALL_EAD2002) throw new Error(`The small finding aid has no place ${place}`);
  return changed;
}
