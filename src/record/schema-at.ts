// Finds the schema of a field by its path, for messages, for the walk over references, and for the guide.
import type { z } from 'zod';
import type { Path } from './front-matter.ts';

type Inner = {
  type: string;
  shape?: Record<string, z.ZodType>;
  element?: z.ZodType;
  innerType?: z.ZodType;
  options?: z.ZodType[];
  valueType?: z.ZodType;
};

/** A schema's definition with every `optional` around it taken off. */
export function bare(schema: z.ZodType): Inner {
  let inner = schema.def as unknown as Inner;
  while (inner.type === 'optional' && inner.innerType) inner = inner.innerType.def as unknown as Inner;
  return inner;
}

/** What is said of a field. `instead` are the words that stand for it, in any text, where it may not be seen. */
type Said = { description?: string; examples?: string[]; audience?: string; instead?: string };

/** Sentence, example and audience of a field. */
export const said = (schema: z.ZodType | undefined): Said => (schema?.meta() ?? {}) as Said;

/** The schema at a path; in a choice of shapes, the first that has the key. */
export function schemaAt(schema: z.ZodType, path: Path): z.ZodType | undefined {
  const [step, ...rest] = path;
  if (step === undefined) return schema;
  const inner = bare(schema);
  const candidates =
    inner.type === 'object'
      ? [inner.shape?.[String(step)]]
      : inner.type === 'array'
        ? [inner.element]
        : inner.type === 'record'
          ? [inner.valueType]
          : (inner.options ?? []).map((option) => schemaAt(option, [step]));
  const next = candidates.find((candidate) => candidate !== undefined);
  return next && schemaAt(next, rest);
}
