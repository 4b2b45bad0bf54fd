import type { XmlElement } from '../../xml/element.ts';
import { isPlainText, isPlainValue, safe } from '../../xml/safe.ts';

/** An element as XML on one line with nothing added, so that reading it again gives the very same tree. */
export function compact(element: XmlElement): string {
  // Joined at once: a text that is added to is held as a tree of its parts, many times as large until it is read.
  const parts: string[] = [];
  put(element, parts);
  return parts.join('');
}

function put({ name, attributes, children }: XmlElement, parts: string[]): void {
  parts.push('<', name);
  for (const key in attributes) {
    const value = attributes[key];
    if (value === undefined) continue;
    const written = isPlainValue(value) ? value : safe(value, 'attribute', () => `${name}/@${key}`);
    parts.push(' ', key, '="', written, '"');
  }
  parts.push('>');
  const empty = parts.length;
  for (const child of children) {
    if (typeof child !== 'string') put(child, parts);
    else if (child !== '') parts.push(isPlainText(child) ? child : safe(child, 'text', () => name));
  }
  if (parts.length === empty) parts[empty - 1] = '/>';
  else parts.push('</', name, '>');
}
