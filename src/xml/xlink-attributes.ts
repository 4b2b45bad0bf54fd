import type { XmlAttribute, XmlElement } from 'libxml2-wasm';

export const XLINK_NAMESPACE = 'http://www.w3.org/1999/xlink';

/** The elements that are links in EAD 2002, as the head of its schema lists them. */
const LINKS =
  'arc archref bibref dao daogrp daoloc extptr extptrloc extref extrefloc linkgrp ptr ptrloc ref refloc resource title'.split(
    ' ',
  );

/** Attributes of links in the DTD of EAD 2002, and their names in XLink (from memory, but for those in the schema). */
const NAMES: Readonly<Record<string, string>> = {
  linktype: 'type',
  href: 'href',
  role: 'role',
  arcrole: 'arcrole',
  title: 'title',
  show: 'show',
  actuate: 'actuate',
  label: 'label',
  from: 'from',
  to: 'to',
};

/** Values that the DTD writes differently (from memory). */
const VALUES: Readonly<Record<string, string>> = {
  'show showother': 'other',
  'show shownone': 'none',
  'actuate onload': 'onLoad',
  'actuate onrequest': 'onRequest',
  'actuate actuateother': 'other',
  'actuate actuatenone': 'none',
};

/**
 * Turns the attributes of links, as the DTD of EAD 2002 has them, into those of XLink.
 * @param root with the namespace of EAD 2002, and with `xlink` declared
 * @returns how many there were
 */
export function toXlink(root: XmlElement, namespace: string): number {
  const links = LINKS.map((name) => `//ead:${name}/@*[namespace-uri() = ""]`).join(' | ');
  const found = root.find(links, { ead: namespace }) as XmlAttribute[];
  const those = found.filter(({ name }) => NAMES[name] !== undefined);
  for (const attribute of those) {
    const { name, value, parent } = attribute;
    const renamed = NAMES[name] ?? name;
    attribute.remove();
    parent?.setAttr(renamed, VALUES[`${name} ${value}`] ?? value, 'xlink');
  }
  return those.length;
}
