import type { Component } from '../../catalogue/component.ts';
import type { FindingAid } from '../../catalogue/finding-aid.ts';
import { element, type XmlElement, type XmlNode } from '../../xml/element.ts';
import { controlAsFound, foundIn, unitAsFound, type Writer } from './as-found.ts';
import type { Context } from './context.ts';

/**
 * A finding aid as a tree: the control, then the description. The components are made one by one, as the writer of the
 * XML asks for them.
 * @param attributes of the root
 * @param dsc the attributes of the element that holds the components
 */
export function tree(
  aid: FindingAid,
  writer: Writer,
  attributes: XmlElement['attributes'],
  dsc: XmlElement['attributes'],
): XmlElement {
  const context = writer.contextOf(aid);
  const control = writer.control(aid.control, context);
  const described = collection(aid.collection, context, writer, dsc);
  const { kept } = aid.control;
  if (kept === undefined) return element('ead', attributes, [control, described]);
  const root = controlAsFound({ ...aid.control, kept }, control, context, writer);
  return element('ead', { ...attributes, ...root.attributes }, [...root.children, described]);
}

/** The element of a unit without the units below it, as it was found where that is kept. */
function described(unit: Component, context: Context, writer: Writer, name: string) {
  const now = writer.unit(unit, context, name);
  const { kept } = unit;
  return kept === undefined ? now : unitAsFound({ ...unit, kept }, now, writer);
}

function collection(
  top: Component,
  context: Context,
  writer: Writer,
  dsc: XmlElement['attributes'],
): XmlElement {
  const { name, attributes, children } = described(top, context, writer, 'archdesc');
  const [first, ...others] = parted(top.children, writer);
  if (first === undefined)
    return element(
      name,
      attributes,
      children.map((child) => withUnits(child)),
    );
  const make = ({ shell, units }: Part) =>
    element('dsc', shell?.attributes ?? dsc, filled(shell, components(units, context, writer)));
  const at = children.findIndex((child) => typeof child !== 'string' && holdsPlace(child));
  const place = children[at];
  if (place === undefined || typeof place === 'string')
    return element(name, attributes, [...children, make(first), ...others.map(make)]);
  const dscs = [withUnits(place, components(first.units, context, writer)), ...others.map(make)];
  return element(name, attributes, [...children.slice(0, at), ...dscs, ...children.slice(at + 1)]);
}

/** Units that stand in one `dsc`; the shell of it where it was found. */
interface Part {
  shell?: XmlElement;
  units: Component[];
}

/** The units below the whole, parted where another `dsc` was found to begin. */
function parted(units: readonly Component[], writer: Writer): Part[] {
  const parts: Part[] = [];
  for (const unit of units) {
    const shell = before(unit, writer).find(({ name }) => name === 'dsc');
    const last = parts.at(-1);
    if (last === undefined || shell !== undefined) parts.push({ ...(shell && { shell }), units: [unit] });
    else last.units.push(unit);
  }
  return parts;
}

function before(unit: Component, writer: Writer): XmlElement[] {
  const { kept } = unit;
  if (kept?.before === undefined || kept.format !== writer.version) return [];
  return [...foundIn(`<before>${kept.before}</before>`, unit.id).children].filter(
    (node): node is XmlElement & { attributes: Record<string, string>; children: readonly [] } =>
      typeof node !== 'string',
  );
}

/** An empty `c` in a `dsc` stands for the units. */
const isPlace = (node: XmlNode) =>
  typeof node !== 'string' && node.name === 'c' && [...node.children].length === 0;
const holdsPlace = ({ name, children }: XmlElement) => name === 'dsc' && [...children].some(isPlace);

function withUnits(node: XmlNode, units: Iterable<XmlElement> = []): XmlNode {
  if (typeof node === 'string' || !holdsPlace(node)) return node;
  return element(node.name, node.attributes, filled(node, units));
}

/** What stands in an element before and after its units. */
function* filled(shell: XmlElement | undefined, units: Iterable<XmlElement>): Generator<XmlElement> {
  const around = [...(shell?.children ?? [])].filter((node) => typeof node !== 'string');
  const place = around.findIndex(isPlace);
  yield* place < 0 ? around : around.slice(0, place);
  yield* units;
  if (place >= 0) yield* around.slice(place + 1);
}

function* components(units: readonly Component[], context: Context, writer: Writer): Generator<XmlElement> {
  for (const unit of units) {
    if (unit.kept?.before !== undefined) yield* before(unit, writer).filter(({ name }) => name !== 'dsc');
    const one = described(unit, context, writer, 'c');
    yield unit.children.length === 0
      ? one
      : element(one.name, one.attributes, all(one.children, unit, context, writer));
  }
}

/** A unit and those below it; there is no text between them. */
function* all(
  children: readonly XmlNode[],
  unit: Component,
  context: Context,
  writer: Writer,
): Generator<XmlElement> {
  for (const child of children) if (typeof child !== 'string') yield child;
  yield* components(unit.children, context, writer);
}
