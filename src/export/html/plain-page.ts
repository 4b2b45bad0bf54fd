import { createHash } from 'node:crypto';
import { h, type Markup, ours } from './markup.ts';

/** A page without scripts for reading and printing; it fetches nothing from anywhere. */
export function plainPage(title: string, style: string, body: Markup): string {
  const hash = createHash('sha256').update(style, 'utf8').digest('base64');
  return h`<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${`default-src 'none'; style-src 'sha256-${hash}'`}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${title}</title>
<style>${ours(style)}</style>
</head>
<body>
<main>
<h1>${title}</h1>
${body}</main>
</body>
</html>
`.html;
}
