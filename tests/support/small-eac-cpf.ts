/** A record written by hand that uses every element and attribute of the profile; invented. */
export const SMALL_EAC_CPF = `<?xml version="1.0" encoding="UTF-8"?>
<eac xmlns="https://archivists.org/ns/eac/v2">
  <control countryEncoding="iso3166-1" dateEncoding="iso8601" languageEncoding="iso639-2b" repositoryEncoding="iso15511" scriptEncoding="iso15924" maintenanceStatus="revised" publicationStatus="inProcess">
    <recordId>QF-ada-quill</recordId>
    <maintenanceAgency countryCode="US">
      <agencyCode>US-HeHS</agencyCode>
      <agencyName>Heronsford Historical Society</agencyName>
      <descriptiveNote><p>Mill Lane, Heronsford</p></descriptiveNote>
    </maintenanceAgency>
    <maintenanceHistory>
      <maintenanceEvent maintenanceEventType="created">
        <agent agentType="human">Nora Quill</agent>
        <eventDateTime standardDateTime="2026-05-14T10:20:30Z">2026 May 14</eventDateTime>
        <eventDescription>Written from the family's list.</eventDescription>
        <eventDescription>Read over by her cousin.</eventDescription>
      </maintenanceEvent>
    </maintenanceHistory>
    <sources><source><reference>What Edvard Quill told in 1999.</reference></source></sources>
    <conventionDeclaration>
      <reference>Describing Archives: A Content Standard</reference>
      <shortCode>DACS</shortCode>
    </conventionDeclaration>
    <languageDeclaration languageCode="eng" scriptCode="Latn"/>
    <rightsDeclaration>
      <reference href="https://example.org/cc0">CC0 1.0 Universal</reference>
      <descriptiveNote><p>Anyone may copy this record.</p></descriptiveNote>
    </rightsDeclaration>
  </control>
  <cpfDescription>
    <identity>
      <entityType value="person"/>
      <nameEntry status="authorized" vocabularySource="local">
        <part localType="surname">Quill</part>
        <part localType="forename">Ada</part>
        <part localType="dates">1902-1988</part>
      </nameEntry>
      <nameEntry status="alternative"><part>Aunt Ada</part></nameEntry>
      <identityId valueURI="https://example.org/names/ada" vocabularySource="local">ada</identityId>
    </identity>
    <description>
      <occupations><occupation><term>teacher</term></occupation></occupations>
      <places>
        <place><placeName>Heronsford</placeName><placeRole>birth</placeRole></place>
        <place><placeName>The ferry house</placeName><placeRole>residence</placeRole></place>
      </places>
      <existDates>
        <dateRange>
          <fromDate standardDate="1902-05-14">1902 May 14</fromDate>
          <toDate certainty="approximate" notBefore="1980" notAfter="1989-12-31">1980s</toDate>
        </dateRange>
      </existDates>
      <biogHist><p>She taught.</p><p>She kept the ferry.</p></biogHist>
    </description>
    <relations>
      <relation>
        <targetEntity targetType="person" valueURI="QF-edvard-quill"><part>Quill, Edvard</part></targetEntity>
        <targetRole>brother</targetRole>
      </relation>
      <relation>
        <targetEntity targetType="resource" valueURI="QF">
          <part localType="title">Quill family papers</part>
          <part localType="referenceCode">QF</part>
        </targetEntity>
        <relationType>creatorOf</relationType>
        <descriptiveNote><p>In the finding aid as photographer.</p></descriptiveNote>
      </relation>
    </relations>
  </cpfDescription>
</eac>
`;

/**
 * The same with one place changed.
 * @throws Error where the place is not found, so that no test passes for a change that was never made
 */
export function smallEacCpfWith(place: string | RegExp, instead: string): string {
  const changed = SMALL_EAC_CPF.replace(place, instead);
  if (changed === SMALL_EAC_CPF) throw new Error(`The small record has no place ${place}`);
  return changed;
}
