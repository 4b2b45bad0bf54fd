import type { Thing } from '../catalogue/thing.ts';
import { listed } from './listed.ts';
import { materialOf } from './material.ts';
import type { Met } from './word-finder.ts';

/**
 * Things of iron or tin that families keep, as a title names them; common practice. Extend it a word at a time. A box or
 * a trunk is of wood or card as often, and what is in it may have clips.
 */
const METAL = new Set(
  listed(
    'tin, tins, can, cans, canister, cashbox, key, keys, lock, padlock, lantern, lamp, torch',
    'tool, tools, knife, knives, scissors, shears, iron, horseshoe, horseshoes, nail, nails, hook, hooks, bolt, bolts, hinge',
    'anchor, chain, chains, cable, pulley, bell, whistle, badge, buckle, kettle, pan, pot, spoon, fork, bucket, helmet',
    'saw, axe, hammer, plane, chisel, spanner, spade, shovel, hoe, rake, scythe, sickle, typewriter, stove, compass, sign',
  ),
);
const FASTENER = /\b(?:clips?|paperclips?|pins?|pinned|staples?|stapled|bands?|spike)\b/;

/**
 * Whether a word of rust is said of a thing that is of metal itself: there is no clip to slide off a tin. A thing whose
 * kind is known as an object is none of paper anyhow; this is for those that only their title tells, even where that
 * goes on with papers, as "Tin of letters".
 */
export function isOwnRust({ text, at }: Pick<Met<unknown>, 'text' | 'at'>, { kind, title }: Thing): boolean {
  if (kind !== undefined && materialOf(kind) !== 'unknown') return false;
  if (!/^(?:rust|corro)/.test(text.slice(at)) || FASTENER.test(text)) return false;
  const [named = ''] = title.toLowerCase().split(/ (?:of|with|for|in|from|on|to|by|and)\b|[,;:.()–—]/);
  return METAL.has(named.trim().split(' ').at(-1) ?? '');
}
