import { M, type MediaType } from './media-type.ts';

const WORD = 'the form of one maker’s program; keep a PDF made of it beside it';
const OLE = 'application/x-ole-storage';
const ZIP = 'application/zip';
const TEXT = 'text/plain';
const MIMETYPE = 'ISO/IEC 26300-3, 2.2.4: the first entry of the archive names the type';

/** A form of office programs before 2007: all have the same beginning. */
const inOle = (type: string, name: string, extensions: readonly string[]): MediaType => ({
  type,
  name,
  extensions,
  inside: OLE,
  unfit: WORD,
  source: M,
});

/** A form of office programs since 2007: a zip archive with a folder by which each is known. */
const inZip = (type: string, name: string, extension: string, folder: string): MediaType => ({
  type: `application/vnd.openxmlformats-officedocument.${type}`,
  name,
  extensions: [extension],
  begins: [[[0, 'PK\x03\x04']]],
  holds: ['[Content_Types].xml', folder],
  inside: ZIP,
  source: 'ISO/IEC 29500-2',
});

/** A zip archive whose first entry, stored as it is, is called `mimetype`. */
const openDocument = (type: string, name: string, extensions: readonly string[]): MediaType => ({
  type,
  name,
  extensions,
  begins: [
    [
      [0, 'PK\x03\x04'],
      [30, `mimetype${type}`],
    ],
  ],
  source: MIMETYPE,
});

/** Writing, mail, tables, and archives of files. What is told by more marks stands before what is told by fewer. */
export const TEXTS: readonly MediaType[] = [
  {
    type: 'application/pdf',
    name: 'PDF document',
    extensions: ['pdf'],
    begins: [[[0, '%PDF-']]],
    source: 'ISO 32000-1, 7.5.2',
  },
  {
    type: 'application/rtf',
    name: 'RTF document',
    extensions: ['rtf', 'doc'],
    begins: [[[0, '{\\rtf']]],
    source: M,
  },
  {
    type: 'application/postscript',
    name: 'PostScript document',
    extensions: ['ps', 'eps', 'ai'],
    begins: [[[0, '%!PS']]],
    source: M,
  },
  openDocument('application/vnd.oasis.opendocument.text', 'OpenDocument text', ['odt']),
  openDocument('application/vnd.oasis.opendocument.spreadsheet', 'OpenDocument table', ['ods']),
  openDocument('application/vnd.oasis.opendocument.presentation', 'OpenDocument slides', ['odp']),
  openDocument('application/vnd.oasis.opendocument.graphics', 'OpenDocument drawing', ['odg']),
  openDocument('application/epub+zip', 'EPUB book', ['epub']),
  inZip('wordprocessingml.document', 'DOCX document', 'docx', 'word/'),
  inZip('spreadsheetml.sheet', 'XLSX table', 'xlsx', 'xl/'),
  inZip('presentationml.presentation', 'PPTX slides', 'pptx', 'ppt/'),
  {
    type: ZIP,
    name: 'zip archive',
    extensions: ['zip'],
    begins: [[[0, 'PK\x03\x04']], [[0, 'PK\x05\x06']]],
    unfit: 'hides what it holds, and one fault spoils it all; unpack it, and list what is in it',
    source: 'ISO/IEC 21320-1; the judgement is common practice',
  },
  {
    type: OLE,
    name: 'document of an office program before 2007',
    extensions: ['ole'],
    begins: [[[0, '\xD0\xCF\x11\xE0\xA1\xB1\x1A\xE1']]],
    unfit: WORD,
    source: M,
  },
  inOle('application/msword', 'DOC document', ['doc', 'dot']),
  inOle('application/vnd.ms-excel', 'XLS table', ['xls']),
  inOle('application/vnd.ms-powerpoint', 'PPT slides', ['ppt', 'pps']),
  inOle('application/vnd.ms-outlook', 'MSG mail', ['msg']),
  inOle('application/vnd.ms-works', 'Works document', ['wps']),
  inOle('application/x-mspublisher', 'PUB layout', ['pub']),
  {
    type: 'application/vnd.wordperfect',
    name: 'WordPerfect document',
    extensions: ['wpd', 'wp', 'wp5', 'wp6'],
    begins: [[[0, '\xFFWPC']]],
    unfit: WORD,
    source: M,
  },
  {
    type: 'application/x-rar-compressed',
    name: 'RAR archive',
    extensions: ['rar'],
    begins: [[[0, 'Rar!\x1A\x07']]],
    unfit: 'hides what it holds, in the form of one maker; unpack it, and list what is in it',
    source: M,
  },
  {
    type: 'application/x-7z-compressed',
    name: '7z archive',
    extensions: ['7z'],
    begins: [[[0, '7z\xBC\xAF\x27\x1C']]],
    unfit: 'hides what it holds; unpack it, and list what is in it',
    source: M,
  },
  // What follows is told by its words, in text-types.ts.
  { type: 'message/rfc822', name: 'mail', extensions: ['eml', 'mht'], inside: TEXT, source: 'RFC 5322, 2.2' },
  {
    type: 'application/mbox',
    name: 'mailbox',
    extensions: ['mbox', 'mbx'],
    inside: TEXT,
    source: 'RFC 4155',
  },
  {
    type: 'text/html',
    name: 'web page',
    extensions: ['html', 'htm', 'xhtml'],
    inside: TEXT,
    source: 'HTML Living Standard, 13.1',
  },
  { type: 'application/xml', name: 'XML file', extensions: ['xml'], inside: TEXT, source: 'XML 1.0, 2.8' },
  {
    type: TEXT,
    name: 'plain text',
    extensions: [
      'txt',
      'text',
      'csv',
      'tsv',
      'md',
      'ged',
      'json',
      'yaml',
      'yml',
      'log',
      'srt',
      'vtt',
      'ics',
      'vcf',
      'tex',
    ],
    source: 'RFC 2046, 4.1.3',
  },
];
