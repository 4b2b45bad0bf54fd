import type { XmlDocument, XmlElement, XmlTreeNode } from 'libxml2-wasm';
import { documentTypeOf } from './document-type.ts';
import { legible } from './legible.ts';
import type { ValidationMessage } from './validation.ts';
import { toXlink, XLINK_NAMESPACE } from './xlink-attributes.ts';

/** The namespace that came with the schema of EAD 2002; the DTD before it had none. */
export const EAD2002_NAMESPACE = 'urn:isbn:1-931666-22-9';

const ROOT = `<ead xmlns="${EAD2002_NAMESPACE}" xmlns:xlink="${XLINK_NAMESPACE}">`;

/** A finding aid from before the schemas, told for what it is. */
interface OlderEad {
  /** What it is, what was checked instead of it, and what to do, in sentences. */
  notice?: string;
  /** A fault of the file as a whole. */
  fault?: ValidationMessage;
  /** Whether the document has been changed so that it can be held against the schema of EAD 2002. */
  readable: boolean;
}

/**
 * Knows EAD without a namespace by its document type declaration, or by its header. Of EAD 2002 in its DTD form, the
 * document in memory is given the namespace, and its links the attributes of XLink, in which alone the schema differs
 * from the DTD (besides being stricter about some values).
 * @returns undefined for anything else
 */
export function olderEad(document: XmlDocument, bytes: Uint8Array): OlderEad | undefined {
  const { root } = document;
  if (root.name !== 'ead' || root.namespaceUri !== '') return undefined;
  const type = documentTypeOf(bytes);
  if (type !== undefined && isOfVersion1(type)) return { readable: false, fault: version1(root, type) };
  const named = type !== undefined && /\bead(?:2002)?\.dtd\b/i.test(type);
  if (!named && root.get('eadheader') === null) return undefined;
  const links = asEad2002(root);
  if (type === undefined) return { readable: true, fault: neither(root, links) };
  return { readable: true, notice: dtdForm(type, links) };
}

/** The public name is "-//Society of American Archivists//DTD ead.dtd (… (EAD) Version 1.0)//EN" (from memory). */
const isOfVersion1 = (type: string) => /\bead\.dtd\b.*\bversion 1\.0\b/i.test(type);

function version1({ line }: XmlElement, type: string): ValidationMessage {
  return {
    line,
    path: '/ead',
    element: 'ead',
    says:
      `This is EAD 1.0, the first version, of 1998: it names the document type ${quoted(type)}. ` +
      'It is well-formed XML; more cannot be checked here, for EAD 2002 took its place and some of its elements are ' +
      'gone. Have it converted to EAD 2002 or EAD3, and check that.',
  };
}

function dtdForm(type: string, links: number): string {
  return [
    `This is EAD 2002 in its older form: it names a document type (DTD), ${quoted(type)}, and has no namespace.`,
    'The DTD is not read, so nothing is said about the file by the DTD; and characters and defaults that only the DTD defines are not known here.',
    `Instead it was checked as if it had the namespace ${EAD2002_NAMESPACE}${asXlink(links)}.`,
    'The schema is stricter than the DTD about dates in normal and a few other values.',
    `To bring the file into the newer form, take the document type declaration out and begin with ${ROOT}${prefixed(links)}.`,
  ].join(' ');
}

function neither({ line }: XmlElement, links: number): ValidationMessage {
  return {
    line,
    path: '/ead',
    element: 'ead',
    says: [
      'This is EAD 2002 by its <eadheader>, but it has neither a namespace nor a document type declaration, so no program can tell by what to check it.',
      `Whatever else is said here came of checking it as if it had the namespace ${EAD2002_NAMESPACE}${asXlink(links)}.`,
      `Begin with ${ROOT}${prefixed(links)}.`,
    ].join(' '),
  };
}

const asXlink = (links: number) =>
  links === 0
    ? ''
    : `, and as if the attributes of its links (href, title, show and the like; there are ${links}) were those of XLink`;
const prefixed = (links: number) =>
  links === 0
    ? ''
    : ', and put xlink: before the attributes of links (linktype becomes xlink:type; the values onload and onrequest become onLoad and onRequest)';
const quoted = (type: string) => `“${legible(type, 200)}”`;

/** Gives the elements their namespace, and the links their attributes. @returns how many of the latter there were */
function asEad2002(root: XmlElement): number {
  root.addNsDeclaration(EAD2002_NAMESPACE, '');
  if (root.namespaceForPrefix('xlink') === null) root.addNsDeclaration(XLINK_NAMESPACE, 'xlink');
  giveNamespace(root);
  return toXlink(root, EAD2002_NAMESPACE);
}

/** The parser lets no file be nested deeper than a few hundred elements, so neither is this. */
function giveNamespace(element: XmlElement): void {
  if (element.namespaceUri === '') element.namespacePrefix = '';
  for (let child = element.firstChild; child !== null; child = child.next) {
    if (isElement(child)) giveNamespace(child);
  }
}

const isElement = (node: XmlTreeNode): node is XmlElement => 'firstChild' in node;
