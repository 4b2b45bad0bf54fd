import type { FindingAid } from '../../catalogue/finding-aid.ts';
import { hrefOf } from '../href.ts';
import { legalText } from './markup.ts';
import type { HtmlOptions, Thumbnail } from './options.ts';
import { type Register, registerOf } from './register.ts';
import { type Unit, unitOf } from './unit.ts';

/** What every part of the page may need. */
export interface Context {
  readonly aid: FindingAid;
  readonly top: Unit;
  readonly register: Register;
  readonly thumbnailOf: (file: string) => Thumbnail | undefined;
  readonly addressOf: (file: string) => string;
}

export function contextOf(aid: FindingAid, { thumbnails, copyAddress = hrefOf }: HtmlOptions): Context {
  const top = unitOf(aid.collection);
  return {
    aid,
    top,
    register: registerOf(aid, top),
    thumbnailOf: (file) => thumbnails?.get(file),
    addressOf: (file) => copyAddress(legalText(file)),
  };
}
