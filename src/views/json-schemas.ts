// The record’s schemas as editors read them: JSON Schema, draft 7, of what may be written rather than of what is kept.
import { z } from 'zod';
import { sheets } from '../record/schema/sheets.ts';
import { said } from '../record/schema-at.ts';
import { WORK } from '../record/words.ts';

/** A schema as plain data. */
export type JsonSchema = { [key: string]: unknown };

const TITLES = {
  car: 'car.md',
  shop: 'shop.md',
  part: 'parts/<part>.md',
  choice: 'choices/<choice>.md',
  entry: 'log/<date>.md',
  statement: 'statements/<number>.md',
} as const;

/** By kind of file: the front matter that such a file may have. */
export function jsonSchemas(): { [kind in keyof typeof sheets]: JsonSchema } {
  const made = Object.entries(TITLES).map(([kind, title]) => {
    const { $schema, ...schema } = z.toJSONSchema(sheets[kind as keyof typeof sheets], {
      target: 'draft-07',
      io: 'input',
      unrepresentable: 'any',
      // What is read from text into something else says its example of the text.
      override: ({ zodSchema, jsonSchema }) => {
        const { examples } = said(zodSchema as unknown as z.ZodType);
        if (examples) jsonSchema.examples = examples;
        if (zodSchema._zod.def.type === 'unknown') jsonSchema.anyOf = RANGE;
      },
    });
    return [kind, { $schema, title: `Front matter of ${title}`, ...asWritten(schema) }];
  });
  return Object.fromEntries(made) as ReturnType<typeof jsonSchemas>;
}

/** A figure, or low, likely and high. */
const RANGE: {
  type: 'string' | 'array';
  items?: { type: 'string' };
  minItems?: number;
  maxItems?: number;
}[] = [{ type: 'string' }, { type: 'array', items: { type: 'string' }, minItems: 1, maxItems: 3 }];

/** What YAML makes of a writing: `46.20` is a number to it, `true` is no text, a key without a value is null. */
function asWritten({
  audience: _,
  instead: _instead,
  refers,
  examples,
  propertyNames: _names,
  ...json
}: JsonSchema): JsonSchema {
  const [example] = (examples as string[] | undefined) ?? [];
  const words = json.enum as unknown[] | undefined;
  const isText = json.type === 'string' && !words && json.const === undefined;
  const within = (key: string) => {
    const inner = json[key] as JsonSchema | JsonSchema[] | undefined;
    if (inner === undefined || typeof inner !== 'object') return {};
    return { [key]: Array.isArray(inner) ? inner.map(asWritten) : asWritten(inner) };
  };
  return {
    ...json,
    ...(example ? { description: `${json.description} For example \`${example}\`.` } : {}),
    ...(refers === 'work' ? { examples: [...WORK] } : {}),
    ...(isText ? { type: ['string', 'number'] } : {}),
    ...(words?.includes('true') ? { type: ['string', 'boolean'], enum: [true, 'true'] } : {}),
    ...within('items'),
    ...within('anyOf'),
    ...within('oneOf'),
    ...within('additionalProperties'),
    ...(json.properties ? keysAsWritten(json) : {}),
  };
}

/** The place of a line isn’t written; what may be left out may stand there empty. */
function keysAsWritten(json: JsonSchema): JsonSchema {
  const { place: _, ...properties } = json.properties as { [key: string]: JsonSchema };
  const needed = ((json.required as string[] | undefined) ?? []).filter((key) => key !== 'place');
  const keys = Object.entries(properties).map(([key, inner]) => {
    const own = asWritten(inner);
    return [key, needed.includes(key) ? own : orEmpty(own)];
  });
  return { properties: Object.fromEntries(keys), required: needed.length > 0 ? needed : undefined };
}

function orEmpty(json: JsonSchema): JsonSchema {
  const { type, anyOf } = json;
  const words = json.enum as unknown[] | undefined;
  return {
    ...json,
    ...(type === undefined ? {} : { type: [...(Array.isArray(type) ? type : [type]), 'null'] }),
    ...(words ? { enum: [...words, null] } : {}),
    ...(anyOf ? { anyOf: [...(anyOf as unknown[]), { type: 'null' }] } : {}),
  };
}
