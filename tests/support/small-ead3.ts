/** A finding aid written by hand that uses every element and attribute of the profile; invented. */
export const SMALL_EAD3 = `<?xml version="1.0" encoding="UTF-8"?>
<ead xmlns="http://ead3.archivists.org/schema/">
  <control countryencoding="iso3166-1" dateencoding="iso8601" langencoding="iso639-2b" repositoryencoding="iso15511" scriptencoding="iso15924">
    <recordid>QF</recordid>
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
      </publicationstmt>
    </filedesc>
    <maintenancestatus value="revised"/>
    <publicationstatus value="approved"/>
    <maintenanceagency countrycode="US">
      <agencycode>US-HeHS</agencycode>
      <agencyname>Heronsford Historical Society</agencyname>
      <descriptivenote><p>Mill Lane, Heronsford</p></descriptivenote>
    </maintenanceagency>
    <languagedeclaration>
      <language langcode="eng">English</language>
      <script scriptcode="Latn">Latin</script>
    </languagedeclaration>
    <conventiondeclaration>
      <abbr>DACS</abbr>
      <citation href="https://example.org/dacs">Describing Archives: A Content Standard</citation>
    </conventiondeclaration>
    <rightsdeclaration>
      <citation href="https://example.org/cc0">CC0 1.0 Universal</citation>
      <descriptivenote><p>Anyone may copy this description.</p></descriptivenote>
    </rightsdeclaration>
    <maintenancehistory>
      <maintenanceevent>
        <eventtype value="created"/>
        <eventdatetime standarddatetime="2026-05-14T10:20:30Z">2026 May 14</eventdatetime>
        <agenttype value="human"/>
        <agent>Nora Quill</agent>
        <eventdescription>Described from the family's list.</eventdescription>
      </maintenanceevent>
    </maintenancehistory>
    <sources><source><sourceentry>What Edvard Quill told in 1999.</sourceentry></source></sources>
  </control>
  <archdesc id="top" level="otherlevel" otherlevel="household">
    <did>
      <unitid countrycode="US" repositorycode="US-HeHS">QF</unitid>
      <unitid localtype="accession">1999-3</unitid>
      <unittitle>Quill family papers</unittitle>
      <unitdatestructured unitdatetype="inclusive" certainty="approximate">
        <daterange>
          <fromdate standarddate="1891" notbefore="1890" notafter="1892-06">1891</fromdate>
          <todate notbefore="1974-01-01" notafter="1974-12-31">1974</todate>
        </daterange>
      </unitdatestructured>
      <unitdatestructured unitdatetype="bulk">
        <dateset>
          <datesingle standarddate="1902-05" notbefore="1902-05-01" notafter="1902-05-31">1902 May</datesingle>
          <daterange><todate standarddate="1960">1960</todate></daterange>
        </dateset>
      </unitdatestructured>
      <physdescstructured coverage="whole" physdescstructuredtype="spaceoccupied">
        <quantity approximate="true">1.25</quantity>
        <unittype>linear feet</unittype>
        <physfacet>paper</physfacet>
        <dimensions>38 cm high</dimensions>
      </physdescstructured>
      <physdesc>Some of it damp.</physdesc>
      <origination>
        <famname relator="creator" source="local" identifier="https://example.org/quill"><part>Quill family</part></famname>
        <persname><part>Quill, Ada, 1902-1988</part></persname>
        <corpname><part>Quill's Ferry</part></corpname>
      </origination>
      <repository>
        <corpname><part>Heronsford Historical Society</part></corpname>
        <address><addressline>1 Landing Lane</addressline></address>
      </repository>
      <abstract>Papers of three generations at a ferry.</abstract>
      <langmaterial>
        <languageset>
          <language langcode="nor">Norwegian</language>
          <script scriptcode="Latn">Latin</script>
        </languageset>
        <language langcode="eng">English</language>
        <descriptivenote><p>Mostly English.</p></descriptivenote>
      </langmaterial>
      <container localtype="box" id="box1">1</container>
      <container localtype="folder" parent="box1">2</container>
      <physloc>Shelf 4</physloc>
      <daoset coverage="whole">
        <dao daotype="derived" href="copies/a.tif" linktitle="Front"><descriptivenote><p>Scan.</p></descriptivenote></dao>
        <dao daotype="borndigital" href="https://example.org/b"/>
      </daoset>
      <didnote>Date: The year is a guess.</didnote>
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
    <accessrestrict localtype="restricted"><p>Open, save one folder.</p><p>Restricted until <date normal="2040">2040</date>.</p></accessrestrict>
    <userestrict><p>Ask the society.</p></userestrict>
    <legalstatus><p>Deed of gift.</p></legalstatus>
    <phystech localtype="physical characteristics"><p>Brittle.</p></phystech>
    <phystech localtype="technical requirements"><p>A projector.</p></phystech>
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
      <persname><part>Quill, Ada</part></persname>
      <famname><part>Quill family</part></famname>
      <corpname><part>Quill's Ferry</part></corpname>
      <geogname source="local"><part>Heronsford</part></geogname>
      <subject><part>Ferries</part></subject>
      <genreform><part>letters</part></genreform>
      <occupation><part>ferrymen</part></occupation>
      <function><part>ferrying</part></function>
      <title><part>The Heron</part></title>
    </controlaccess>
    <dsc dsctype="combined">
      <c id="c1" level="otherlevel" otherlevel="bundle">
        <did><unittitle>Letters</unittitle></did>
        <c id="c2" level="item">
          <did>
            <unittitle>Letter to Ada</unittitle>
            <unitdate unitdatetype="inclusive">undated</unitdate>
            <dao daotype="unknown" href="copies/letter.pdf"/>
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
export function smallEad3With(place: string | RegExp, instead: string): string {
  const changed = SMALL_EAD3.replace(place, instead);
  if (changed === SMALL_EAD3) throw new Error(`The small finding aid has no place ${place}`);
  return changed;
}
