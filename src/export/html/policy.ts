import { createHash } from 'node:crypto';

const hashOf = (text: string): string =>
  `'sha256-${createHash('sha256').update(text, 'utf8').digest('base64')}'`;

/**
 * The content security policy of the page (W3C Content Security Policy Level 3): nothing is fetched from anywhere; the
 * one style, the one script and the small pictures within the page are all there is.
 */
export const policy = (style: string, script: string): string =>
  [
    "default-src 'none'",
    `style-src ${hashOf(style)}`,
    `script-src ${hashOf(script)}`,
    'img-src data:',
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ');
