// Reads what the page sends: its shape is checked before anything looks at it.
import { z } from 'zod';
import type { Form } from './browser/told.ts';
import { shapes } from './shapes.ts';

const LISTS = shapes().map(({ list }) => list);
const text = z.string().max(20_000);
const line = z.strictObject({
  at: z.number().int().min(0).optional(),
  line: z.union([text, z.record(z.string().max(100), text)]),
});
export const form = z.strictObject({
  entry: z.string().max(20),
  read: z.string().max(64),
  by: text,
  lists: z.partialRecord(z.enum(LISTS), z.array(line).max(500)),
  words: z.string().max(500_000),
  decided: z
    .strictObject({ choice: text, read: z.string().max(64), option: text, by: text, reason: text })
    .optional(),
});
/** `typed` is true where somebody typed since the page was opened. */
const asked = z.strictObject({ form, sign: z.string().max(64).optional(), typed: z.boolean().optional() });

/** The form and the sign of what was shown; nothing when it is anything else. */
export function readForm(json: string): { form: Form; sign: string; typed: boolean } | undefined {
  try {
    const { form, sign = '', typed = false } = asked.parse(JSON.parse(json));
    return { form: form as Form, sign, typed };
  } catch {
    return undefined;
  }
}
