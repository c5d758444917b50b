// The record as one audience may see it. It is applied before anything is rendered, indexed, summed or written, so that
// no page has to remember what is private.
import type { Root, RootContent } from 'mdast';
import type { z } from 'zod';
import type { CarRecord } from './record.ts';
import type { Audience } from './schema/fields.ts';
import { sheets } from './schema/sheets.ts';
import { bare, said } from './schema-at.ts';
import { namesHidden, unnamed } from './unnamed.ts';

export type { Audience };

/** Everybody, the owner and the shop, the shop alone: each sees what those before it see. */
export const AUDIENCES = ['history', 'owner', 'shop'] as const satisfies readonly Audience[];

/**
 * The record without the fields that the audience may not see, by the schema of each. What had only such fields is left
 * out whole. An amount that a kept line must have is 0: no figure of it may be shown.
 */
export function forAudience(record: CarRecord, audience: Audience): CarRecord {
  if (audience === 'shop') return record;
  const of = <T extends CarRecord['car' | 'shop'] | CarRecord[Files][number]>(
    kind: keyof typeof sheets,
    file: T,
  ) => published(keysSeen(shapesOf(sheets[kind]), file, { audience, unshown: noFigure }).kept as T);
  const all = <K extends Files>(kind: keyof typeof sheets, files: CarRecord[K]) =>
    files.map((file) => of(kind, file)) as CarRecord[K];
  const statements = audience === 'owner' ? all<'statements'>('statement', record.statements) : [];
  const kept: CarRecord = {
    ...record,
    car: of('car', record.car),
    // The words below the shop’s own rules are the shop’s.
    shop: {
      ...of('shop', record.shop),
      body: { markdown: '', line: 1, tree: { type: 'root' as const, children: [] } },
    },
    parts: all<'parts'>('part', record.parts),
    choices: all<'choices'>('choice', record.choices),
    entries: all<'entries'>('entry', record.entries),
    statements,
  };
  const { car, shop, parts, choices, entries } = kept;
  return { ...kept, ...namelessFor(audience, record)({ car, shop, parts, choices, entries }) };
}

/** What tells names: of the car’s owner, which not everybody may see, and of the rest, which everybody may. */
type Names = {
  car: { name?: string; 'bodied-by'?: string | undefined; owner?: unknown };
  shop: {
    shop?: string;
    town?: string | undefined;
    people?: readonly { name?: string }[];
    vendors?: readonly { name?: string }[] | undefined;
  };
  parts: readonly { name?: string }[];
};

/** Takes the names that an audience may not see out of every text of a value: of a file, read or as it was written. */
export function namelessFor(audience: Audience, { car, shop, parts }: Names): <T>(value: T) => T {
  const names = namesHidden(sheets.car, car, (field) => !maySee(field, audience));
  const named = [...(shop.people ?? []), ...(shop.vendors ?? []), ...parts].map(({ name }) => name);
  const others = [car.name, car['bodied-by'], shop.shop, shop.town, ...named].filter(
    (name) => name !== undefined,
  );
  return (value) => unnamed(value, names, others);
}

/** The same of one file’s values as they were written: an amount that a kept line must have is written `0`. */
export function writtenFor(
  kind: keyof typeof sheets,
  values: Record<string, unknown>,
  audience: Audience,
): Record<string, unknown> {
  const unshown = (held: unknown) => (typeof held === 'string' ? '0' : undefined);
  return keysSeen(shapesOf(sheets[kind]), values, { audience, unshown }).kept;
}

type Files = 'parts' | 'choices' | 'entries' | 'statements';

type Shape = Record<string, z.ZodType>;

/** `unshown` stands where a line must have a value that this audience may not see. */
type For = { audience: Audience; unshown: (held: unknown) => unknown };

const noFigure = (held: unknown) => (typeof held === 'number' ? 0 : undefined);

/** A value with what the audience may see of it; nothing where it may see none of its fields. */
function seen(schema: z.ZodType, value: unknown, whom: For): unknown {
  const inner = bare(schema);
  if (Array.isArray(value)) {
    const { element } = inner;
    return element ? value.flatMap((one) => seen(element, one, whom) ?? []) : value;
  }
  const shapes = shapesOf(schema);
  if (shapes.length === 0 || typeof value !== 'object' || value === null) return value;
  const { kept, shown } = keysSeen(shapes, value, whom);
  return shown ? kept : undefined;
}

/** The keys that the audience may see; `shown` where there are any, or never were any that it may not. */
function keysSeen(shapes: Shape[], value: object, whom: For) {
  const kept: [string, unknown][] = [];
  let hidden = false;
  let shown = false;
  for (const [key, held] of Object.entries(value)) {
    const fields = shapes.flatMap((shape) => shape[key] ?? []);
    const [field] = fields;
    if (!field || key === 'place') {
      kept.push([key, held]);
      continue;
    }
    const open = fields.every((one) => maySee(one, whom.audience));
    const inside = open ? seen(field, held, whom) : undefined;
    const instead = !open && needed(field) ? whom.unshown(held) : undefined;
    if (inside !== undefined) kept.push([key, inside]);
    else if (instead !== undefined) kept.push([key, instead]);
    if (inside !== undefined) shown = true;
    else hidden = true;
  }
  return { kept: Object.fromEntries(kept), shown: shown || !hidden };
}

/** The shapes that a set of keys may have: one, or several where its kind decides. */
function shapesOf(schema: z.ZodType): Shape[] {
  const inner = bare(schema);
  return inner.shape ? [inner.shape] : (inner.options ?? []).flatMap(shapesOf);
}

/** A field that names no audience is the shop’s. */
function maySee(field: z.ZodType, audience: Audience): boolean {
  const needs = (AUDIENCES as readonly unknown[]).indexOf(said(field).audience);
  return needs >= 0 && needs <= AUDIENCES.indexOf(audience);
}

const needed = (field: z.ZodType) => field.def.type !== 'optional';

/** A file without the remarks that a writer put between `<!--` and `-->`. */
function published<T extends { body: { markdown: string; tree: Root } }>(file: T): T {
  const { body } = file;
  return {
    ...file,
    body: {
      ...body,
      markdown: body.markdown.replaceAll(/<!--[\s\S]*?-->/g, ''),
      tree: withoutHtml(body.tree),
    },
  };
}

function withoutHtml<N extends Root | RootContent>(node: N): N {
  if (!('children' in node)) return node;
  const children = (node.children as RootContent[]).filter(({ type }) => type !== 'html').map(withoutHtml);
  return { ...node, children } as N;
}
