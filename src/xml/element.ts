/** A child of an element: an element or a text. */
export type XmlNode = XmlElement | string;

/**
 * An element of an XML tree that is still to be written. Namespaces are attributes like any other (`xmlns`).
 * The children are an array, or any other iterable that is pulled only when its turn to be written comes, so that
 * a hundred thousand components need not be in memory at once. Such a lazy list holds elements only.
 */
export interface XmlElement {
  name: string;
  /** Attributes in the order in which they are written; those that are undefined are left out. */
  attributes: Readonly<Record<string, string | undefined>>;
  children: Iterable<XmlNode>;
  /** Where the very same object stands in many places; the writer keeps here what it looks like. */
  shared?: Written;
}

/** How an element was written last. */
export interface Written {
  /** How deep in the tree. */
  depth: number;
  /** Empty where it was so only once. */
  text: string;
}

/** Makes an element; a plain string as `children` is its text: `element('part', {}, 'Quill, Ada')`. */
export function element(
  name: string,
  attributes: Readonly<Record<string, string | undefined>>,
  children: Iterable<XmlNode> | string = [],
): XmlElement {
  // A string is itself an iterable, of its characters: it becomes a list of one text here, once and for all.
  return { name, attributes, children: typeof children === 'string' ? [children] : children };
}

/** Marks an element as one that stands in many places as the very same object. */
export const shared = ({ name, attributes, children }: XmlElement): XmlElement => ({
  name,
  attributes,
  children,
  shared: { depth: -1, text: '' },
});
