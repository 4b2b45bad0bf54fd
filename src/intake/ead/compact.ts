import type { XmlElement } from '../../xml/element.ts';
import { isPlainText, isPlainValue, safe } from '../../xml/safe.ts';

/** An element as XML on one line with nothing added, so that reading it again gives the very same tree. */
export function compact({ name, attributes, children }: XmlElement): string {
  let start = `<${name}`;
  for (const key in attributes) {
    const value = attributes[key];
    if (value === undefined) continue;
    start += ` ${key}="${isPlainValue(value) ? value : safe(value, 'attribute', () => `${name}/@${key}`)}"`;
  }
  let content = '';
  for (const child of children) {
    if (typeof child !== 'string') content += compact(child);
    else content += isPlainText(child) ? child : safe(child, 'text', () => name);
  }
  return content === '' ? `${start}/>` : `${start}>${content}</${name}>`;
}
