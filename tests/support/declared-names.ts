import type { ElementType } from './schema-declarations.ts';

/** The names of all elements and attributes (`name/@attribute`) that may stand below an element, itself excepted. */
export function declaredNames(
  type: ElementType,
  seen = new Set<string>(),
  names = new Set<string>(),
): Set<string> {
  if (seen.has(type.key)) return names;
  seen.add(type.key);
  for (const [name, child] of type.childTypes) {
    names.add(name);
    for (const attribute of child().attributes.keys()) names.add(`${name}/@${attribute}`);
    declaredNames(child(), seen, names);
  }
  return names;
}
