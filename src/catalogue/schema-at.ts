import { z } from 'zod';

/** The schemas that a value at the end of a path may have; none where the path leads nowhere. */
export function schemasAt(schema: z.core.$ZodType, path: readonly PropertyKey[]): z.core.$ZodType[] {
  const choices = unwrapped(schema);
  const [first, ...rest] = path;
  if (first === undefined) return choices;
  return choices.flatMap((choice) => {
    if (choice instanceof z.ZodObject) {
      const field: z.core.$ZodType | undefined = Object.hasOwn(choice.shape, first)
        ? choice.shape[first as string]
        : undefined;
      return field === undefined ? [] : schemasAt(field, rest);
    }
    if (choice instanceof z.ZodArray) return typeof first === 'number' ? schemasAt(choice.element, rest) : [];
    return choice instanceof z.ZodRecord ? schemasAt(choice.valueType, rest) : [];
  });
}

/** The keys that an object at the end of a path may have. */
export function keysAt(schema: z.core.$ZodType, path: readonly PropertyKey[]): string[] {
  return schemasAt(schema, path).flatMap((choice) =>
    choice instanceof z.ZodObject ? Object.keys(choice.shape) : [],
  );
}

/** What stands below optional, default, transformation and choice. */
function unwrapped(schema: z.core.$ZodType): z.core.$ZodType[] {
  if (schema instanceof z.ZodOptional || schema instanceof z.ZodDefault || schema instanceof z.ZodPrefault) {
    return unwrapped(schema.def.innerType);
  }
  if (schema instanceof z.ZodPipe) return unwrapped(schema.def.in);
  return schema instanceof z.ZodUnion ? schema.options.flatMap(unwrapped) : [schema];
}

const FIELDS = new WeakMap<z.core.$ZodType, readonly (readonly [key: string, schema: z.core.$ZodType])[]>();

/** The fields of an object, or of the objects in a list, in the order of the model; none for anything else. */
export function fieldsOf(
  schema: z.core.$ZodType,
): readonly (readonly [key: string, schema: z.core.$ZodType])[] {
  const known = FIELDS.get(schema);
  if (known !== undefined) return known;
  const [choice] = unwrapped(schema);
  if (choice instanceof z.ZodArray) return fieldsOf(choice.element);
  const fields = choice instanceof z.ZodObject ? Object.entries(choice.shape as z.core.$ZodShape) : [];
  FIELDS.set(schema, fields);
  return fields;
}
