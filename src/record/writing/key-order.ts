// The order in which keys are written, and which of them hold words: both follow from the schema.
import type { z } from 'zod';
import { bare, said, schemaAt } from '../schema-at.ts';
import type { Keys } from './edit.ts';

/** What a path of a file may hold, for the writer of values. */
export type Shape = z.ZodType | undefined;

/** The keys of a set in the order of the schema. In a line that has kinds, a note comes last. */
export function keyOrder(shape: Shape, keys: Keys): string[] {
  const inner = shape && bare(shape);
  const kinds = (inner?.options ?? []).filter((option) => bare(option).shape);
  if (kinds.length > 0) {
    const own = kinds.filter((option) => said(bare(option).shape?.kind).examples?.[0] === keys.kind);
    const all = (own.length > 0 ? own : kinds).flatMap((option) => Object.keys(bare(option).shape ?? {}));
    return [...all.filter((key) => key !== 'note'), 'note'];
  }
  return Object.keys(inner?.shape ?? {});
}

/** The keys of a set, in order; what the schema doesn’t know comes last, as it stood. */
export function inOrder(shape: Shape, keys: Keys): string[] {
  const order = keyOrder(shape, keys);
  const rank = (key: string) => (order.includes(key) ? order.indexOf(key) : order.length);
  return Object.keys(keys)
    .filter((key) => keys[key] !== undefined)
    .sort((a, b) => rank(a) - rank(b));
}

/** The schema behind a key of a set, or of the lines of a list. */
export function within(shape: Shape, step: string | number, keys?: Keys): Shape {
  if (shape === undefined) return undefined;
  const own = (bare(shape).options ?? []).find(
    (option) => said(bare(option).shape?.kind).examples?.[0] === keys?.kind && bare(option).shape,
  );
  return schemaAt(own ?? shape, [step]);
}

/** True where a field holds words, so that a number in it is no figure. */
export function holdsWords(shape: Shape): boolean {
  return shape !== undefined && (bare(shape).type === 'string' || isTextOrList(shape));
}

/** True where one text may stand for a list of them. */
export function isTextOrList(shape: Shape): boolean {
  const lists = (shape && bare(shape).options)?.flatMap((option) => bare(option).element ?? []) ?? [];
  return lists.some((element) => bare(element).type === 'string');
}
