import { hrefOf } from '../href.ts';

/** The attributes of a link with one end: XLink 1.0, 5.2. */
export const simpleLink = (file: string, title?: string, role?: string) => ({
  'xlink:href': hrefOf(file),
  'xlink:role': role,
  'xlink:title': title,
  'xlink:type': 'simple',
});
