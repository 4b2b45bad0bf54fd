/** A small finding aid of the Quill family in EAD 2002 as somebody else might have made it; parts can be put in. */
export function foreignEad2002(
  parts: { head?: string; root?: string; header?: string; did?: string; beside?: string; dsc?: string } = {},
): string {
  const {
    head = '<?xml version="1.0" encoding="UTF-8"?>',
    root = 'xmlns="urn:isbn:1-931666-22-9" xmlns:xlink="http://www.w3.org/1999/xlink"',
    header = '',
    did = '',
    beside = '',
    dsc = '',
  } = parts;
  return `${head}
<ead ${root}>
  <eadheader langencoding="iso639-2b"><eadid countrycode="US" mainagencycode="US-XxQuill">quill-1</eadid>
    <filedesc><titlestmt><titleproper>Guide to the <emph render="italic">Heron</emph> papers</titleproper></titlestmt></filedesc>${header}
  </eadheader>
  <archdesc level="collection"><did>
    <unittitle label="Title:">Heron papers</unittitle><unitid>MS 7</unitid>
    <repository><corpname>Applegarth Historical Society</corpname></repository>${did}
  </did>${beside}${dsc}</archdesc>
</ead>`;
}

/** The same in EAD3. */
export function foreignEad3(
  parts: { root?: string; control?: string; did?: string; beside?: string; dsc?: string } = {},
): string {
  const {
    root = 'xmlns="http://ead3.archivists.org/schema/"',
    control = '',
    did = '',
    beside = '',
    dsc = '',
  } = parts;
  return `<?xml version="1.0" encoding="UTF-8"?>
<ead ${root}>
  <control><recordid>quill-1</recordid>
    <filedesc><titlestmt><titleproper>Guide to the Heron papers</titleproper></titlestmt></filedesc>
    <maintenancestatus value="revised"/>
    <maintenanceagency><agencyname>Applegarth Historical Society</agencyname></maintenanceagency>${control}
    <maintenancehistory><maintenanceevent><eventtype value="created"/><eventdatetime>May 2014</eventdatetime><agenttype value="human"/><agent>Ada Quill</agent></maintenanceevent></maintenancehistory>
  </control>
  <archdesc level="collection"><did><unittitle>Heron papers</unittitle><unitid>MS 7</unitid>${did}</did>${beside}${dsc}</archdesc>
</ead>`;
}
