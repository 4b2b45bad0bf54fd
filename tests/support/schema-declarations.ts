import { type ContentModel, choice, nothing, one, repeated, sequence } from './content-model.ts';
import { globalsOf } from './schema-globals.ts';
import { elementsOf, type Tree } from './xml-tree.ts';

/** A simple type, as far as the schemas of EAD and EAC-CPF use them. */
export interface Values {
  /** The built-in type it comes from, such as `token`; undefined for a union. */
  base: string | undefined;
  enumeration: readonly string[] | undefined;
  largest: string | undefined;
  union: readonly Values[] | undefined;
  /** The pattern that a value has to meet. */
  pattern?: string | undefined;
  /** The least number of characters. */
  shortest?: number | undefined;
}

/** A type of element: what it lets in. */
export interface ElementType {
  /** Unique in its schema. */
  key: string;
  model: ContentModel;
  childTypes: ReadonlyMap<string, () => ElementType>;
  /** Whether it lets in text. */
  text: boolean;
  attributes: ReadonlyMap<string, { required: boolean; values: Values }>;
}

const ANYTHING: Values = {
  base: 'anySimpleType',
  enumeration: undefined,
  largest: undefined,
  union: undefined,
};

/**
 * Reads the declarations of a W3C Schema, as far as EAD, EAC-CPF and their profiles use the language: named and
 * anonymous types, groups, extension, restriction, union. Fails for whatever it does not know, so that nothing goes unseen.
 * @returns the type of the global element of that name
 */
export function declarationsOf(file: string, root: string): ElementType {
  const global = globalsOf(file);
  const find = (kind: string, name: string | undefined): Tree => {
    const found = global.get(`xs:${kind} ${local(name)}`);
    if (found === undefined) throw new Error(`${file} declares no ${kind} ${name}`);
    return found;
  };
  const made = new Map<Tree, ElementType>();

  const typeOf = (element: Tree): ElementType => {
    const { type } = element.attributes;
    const inline = elementsOf(element, 'xs:complexType')[0];
    if (inline !== undefined) return complex(inline);
    if (global.has(`xs:complexType ${local(type)}`)) return complex(find('complexType', type));
    // An element of a simple type: text, no children, no attributes.
    const key = `simple ${type}`;
    return { key, model: nothing, childTypes: new Map(), text: true, attributes: new Map() };
  };

  const complex = (type: Tree): ElementType => {
    const known = made.get(type);
    if (known !== undefined) return known;
    const [wrapper] = [...elementsOf(type, 'xs:complexContent'), ...elementsOf(type, 'xs:simpleContent')];
    // A restriction is read where it makes text out of anything: what it lets in is all its own.
    const extension = wrapper && (elementsOf(wrapper, 'xs:extension')[0] ?? textOutOfAnything(wrapper));
    if (wrapper !== undefined && extension === undefined) throw new Error(`${file}: only extension is read`);
    const body = extension ?? type;
    const extended = extension?.attributes.base;
    const base = global.has(`xs:complexType ${local(extended)}`)
      ? complex(find('complexType', extended))
      : undefined;
    if (wrapper?.name === 'xs:complexContent' && base === undefined)
      throw new Error(`${file} declares no ${extended}`);
    const childTypes = new Map(base?.childTypes);
    const own = elementsOf(body).filter(({ name }) => PARTICLES.has(name));
    const result: ElementType = {
      key: `${type.attributes.name ?? 'anonymous'} ${made.size}`,
      model: sequence([base?.model ?? nothing, ...own.map((particle) => modelOf(particle, childTypes))]),
      childTypes,
      text: type.attributes.mixed === 'true' || base?.text === true || wrapper?.name === 'xs:simpleContent',
      attributes: new Map([...(base?.attributes ?? []), ...attributesOf(body)]),
    };
    made.set(type, result);
    return result;
  };

  const modelOf = (particle: Tree, childTypes: Map<string, () => ElementType>): ContentModel => {
    const { minOccurs = '1', maxOccurs = '1', name = '', ref } = particle.attributes;
    const most = maxOccurs === 'unbounded' ? Number.POSITIVE_INFINITY : Number(maxOccurs);
    const inner = () => elementsOf(particle).filter(({ name }) => PARTICLES.has(name));
    const models = (list: readonly Tree[]) => list.map((item) => modelOf(item, childTypes));
    const once = (): ContentModel => {
      switch (particle.name) {
        case 'xs:element':
          childTypes.set(name, () => typeOf(particle));
          return one(name);
        case 'xs:sequence':
          return sequence(models(inner()));
        case 'xs:choice':
          return choice(models(inner()));
        case 'xs:group':
          return sequence(models(elementsOf(find('group', ref)).filter(({ name }) => PARTICLES.has(name))));
        default:
          return one('any element of another namespace');
      }
    };
    return repeated(once(), Number(minOccurs), most);
  };

  const attributesOf = (body: Tree): [string, { required: boolean; values: Values }][] =>
    elementsOf(body).flatMap((item) => {
      const { use, ref, fixed } = item.attributes;
      if (item.name === 'xs:attributeGroup') return attributesOf(find('attributeGroup', ref));
      if (item.name !== 'xs:attribute') return [];
      const { attributes, ...declared } = ref === undefined ? item : find('attribute', ref);
      const { name = '', type } = attributes;
      const inline = elementsOf({ attributes, ...declared }, 'xs:simpleType')[0];
      const values = inline === undefined ? named(type) : simple(inline);
      const only = fixed === undefined ? values : { ...values, enumeration: [fixed] };
      return [[name, { required: use === 'required', values: only }]];
    });

  const named = (type: string | undefined): Values => {
    if (type === undefined) return ANYTHING;
    if (type.startsWith('xs:')) return { ...ANYTHING, base: type.slice(3) };
    return simple(find('simpleType', type));
  };

  const simple = (type: Tree): Values => {
    const [union] = elementsOf(type, 'xs:union');
    if (union !== undefined) {
      const members = union.attributes.memberTypes?.split(' ').map(named) ?? [];
      const own = elementsOf(union, 'xs:simpleType').map(simple);
      return { ...ANYTHING, base: undefined, union: [...members, ...own] };
    }
    const [restriction] = elementsOf(type, 'xs:restriction');
    if (restriction === undefined) throw new Error(`${file}: only restriction and union are read`);
    const values = (facet: string) =>
      elementsOf(restriction, `xs:${facet}`).map(({ attributes }) => attributes.value ?? '');
    const enumeration = values('enumeration');
    const base = named(restriction.attributes.base);
    const [pattern] = values('pattern');
    if (pattern !== undefined && base.pattern !== undefined)
      throw new Error(`${file}: one pattern within another is not read`);
    const shortest = values('minLength')[0];
    return {
      ...base,
      enumeration: enumeration.length > 0 ? enumeration : base.enumeration,
      largest: values('maxInclusive')[0] ?? base.largest,
      pattern: pattern ?? base.pattern,
      shortest: shortest === undefined ? base.shortest : Number(shortest),
    };
  };

  return typeOf(find('element', root));
}

/** A name without the prefix of the schema's own namespace. */
const local = (name: string | undefined) => name?.replace(/^(?:ead|eac):/, '');

function textOutOfAnything(wrapper: Tree): Tree | undefined {
  const [restriction] = elementsOf(wrapper, 'xs:restriction');
  const isSo = wrapper.name === 'xs:simpleContent' && restriction?.attributes.base === 'xs:anyType';
  return isSo ? restriction : undefined;
}

const PARTICLES = new Set(['xs:element', 'xs:sequence', 'xs:choice', 'xs:group', 'xs:any']);
