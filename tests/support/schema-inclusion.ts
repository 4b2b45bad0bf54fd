import { notAllowed } from './content-model.ts';
import { excessText } from './pattern-model.ts';
import type { ElementType, Values } from './schema-declarations.ts';

/**
 * Compares two schemas declaration by declaration, from the root down, and says where the narrow one lets in what the
 * wide one does not. An empty list proves that whatever is valid by the narrow one is valid by the wide one, save for
 * what stands outside the declarations of elements and attributes: that an id is unique.
 */
export function excess(
  narrow: ElementType,
  wide: ElementType,
): { problems: readonly string[]; compared: number } {
  const problems: string[] = [];
  const queue = [{ narrow, wide, path: '' }];
  const seen = new Set<string>();
  for (const { narrow, wide, path } of queue) {
    const key = `${narrow.key} in ${wide.key}`;
    if (seen.has(key)) continue;
    seen.add(key);
    const children = notAllowed(narrow.model, wide.model);
    if (children !== undefined)
      problems.push(`${path} lets in the children ${children.join(', ') || '(none)'}`);
    if (narrow.text && !wide.text) problems.push(`${path} lets in text`);
    problems.push(...attributeProblems(narrow, wide, path));
    for (const [name, type] of narrow.childTypes) {
      const other = wide.childTypes.get(name);
      if (other === undefined) problems.push(`${path} lets in a child ${name}`);
      else queue.push({ narrow: type(), wide: other(), path: `${path}/${name}` });
    }
  }
  return { problems, compared: seen.size };
}

function attributeProblems(narrow: ElementType, wide: ElementType, path: string): string[] {
  const problems: string[] = [];
  for (const [name, { values }] of narrow.attributes) {
    const other = wide.attributes.get(name);
    if (other === undefined) problems.push(`${path} lets in an attribute ${name}`);
    else if (!within(values, other.values)) problems.push(`${path} lets in more values of ${name}`);
  }
  for (const [name, { required }] of wide.attributes) {
    if (required && narrow.attributes.get(name)?.required !== true) {
      problems.push(`${path} lets ${name} be missing`);
    }
  }
  return problems;
}

/** Types whose values are any text at all, once its blanks are collapsed. */
const ANY_TEXT = new Set(['anySimpleType', 'string', 'token']);

/** Whether every value of the one simple type is surely a value of the other. */
function within(narrow: Values, wide: Values): boolean {
  if (wide.union !== undefined) {
    const members = wide.union;
    return narrow.union?.every((value) => members.some((member) => within(value, member))) ?? false;
  }
  if (wide.enumeration !== undefined) {
    const allowed = wide.enumeration;
    return narrow.enumeration?.every((value) => allowed.includes(value)) ?? false;
  }
  if (wide.base === undefined || narrow.union !== undefined) return false;
  if (!meetsPattern(narrow, wide.pattern)) return false;
  if (ANY_TEXT.has(wide.base)) return true;
  const sameKind = narrow.base === wide.base || (narrow.base === 'IDREF' && wide.base === 'IDREFS');
  // Values of one kind and form (2098, 2098-12) stand in the order of their letters.
  const small =
    wide.largest === undefined || (narrow.largest !== undefined && narrow.largest <= wide.largest);
  return sameKind && small;
}

/** What EAC-CPF asks of a text that must not be blank. */
const NOT_BLANK = String.raw`(.|\n|\r)*\S(.|\n|\r)*`;

function meetsPattern(
  { base, pattern, shortest = 0, enumeration }: Values,
  wide: string | undefined,
): boolean {
  if (wide === undefined) return true;
  // A token is without its outer blanks before its length is taken.
  if (wide === NOT_BLANK) return (base === 'token' && shortest > 0) || enumeration?.includes('') === false;
  return pattern !== undefined && excessText(pattern, wide) === undefined;
}
