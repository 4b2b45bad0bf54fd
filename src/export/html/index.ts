import type { FindingAid } from '../../catalogue/finding-aid.ts';
import { withoutRestricted } from '../without-restricted.ts';
import { about } from './about.ts';
import { boxes } from './boxes.ts';
import { contents } from './contents.ts';
import { type Context, contextOf } from './context.ts';
import { finder } from './finder.ts';
import { jsonLd } from './json-ld.ts';
import { languageTag } from './language-tag.ts';
import { h, type Markup, ours } from './markup.ts';
import { navigation } from './navigation.ts';
import type { HtmlOptions } from './options.ts';
import { people } from './people.ts';
import { yearsPicture } from './picture.ts';
import { policy } from './policy.ts';
import { SCRIPT } from './script.ts';
import { opening, story } from './story.ts';
import { styleFor } from './style.ts';
import { terms } from './terms.ts';

export type { HtmlOptions, Thumbnail } from './options.ts';

/**
 * A finding aid as one page that needs nothing but itself: `finding-aid.html`, in pieces. The same finding aid always
 * gives the same bytes.
 */
export function* html(aid: FindingAid, options: HtmlOptions = {}): Generator<string> {
  const context = contextOf(options.withoutRestricted === true ? withoutRestricted(aid) : aid, options);
  for (const part of page(context)) yield part.html;
}

function* page(context: Context): Generator<Markup> {
  yield head(context);
  yield h`<body><a class="skip" href="#part:contents">To the contents</a>\n`;
  yield opening(context);
  yield navigation(context);
  yield h`<main>\n`;
  yield story(context);
  yield h`\n<section id="part:contents"><h2>Contents</h2>\n${finder(context)}${yearsPicture(context)}\n`;
  yield* contents(context);
  yield h`</section>\n${people(context)}\n`;
  yield* terms(context);
  yield h`${boxes(context)}\n${about(context)}\n</main>\n<script type="application/ld+json">`;
  for (const piece of jsonLd(context)) yield ours(piece);
  yield h`</script>\n<script>${ours(SCRIPT)}</script>\n</body></html>\n`;
}

function head({ aid }: Context): Markup {
  const style = styleFor(aid.collection.title);
  return h`<!DOCTYPE html>
<html lang="${languageTag(aid.control.languages[0])}"><head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy(style, SCRIPT)}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="referrer" content="no-referrer">
<meta name="color-scheme" content="light dark">
<title>${aid.control.title}</title>
<style>${ours(style)}</style>
</head>
`;
}
