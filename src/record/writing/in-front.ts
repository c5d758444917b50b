// Finds the one key or line of front matter that an edit is about, and has it changed there.
import { isMap, isSeq, parseDocument } from 'yaml';
import type { z } from 'zod';
import type { Path } from '../front-matter.ts';
import { type Edit, isKeys, type Keys, type Value, valueAt } from './edit.ts';
import { addItem, dropItem, setItem } from './in-list.ts';
import { dropKey, setKey } from './in-set.ts';
import { isTextOrList, type Shape, within } from './key-order.ts';
import { isEmpty, nodeAt, type Splice, Written } from './splice.ts';
import { keysText } from './value-text.ts';

/** An edit of the front matter. */
export type FieldEdit = Exclude<Edit, { append: string } | { words: string }>;

/** The pieces that make the edit, for front matter between its lines of dashes; `wanted` is what it says then. */
export function inFront(
  yaml: string,
  edit: FieldEdit,
  values: Keys,
  wanted: Keys,
  schema: z.ZodType,
): Splice[] | undefined {
  const { contents } = parseDocument(yaml, { logLevel: 'silent', keepSourceTokens: true });
  if (isEmpty(contents))
    return [{ from: yaml.length, to: yaml.length, text: `${keysText(wanted, schema, 0)}\n` }];
  if (!isMap(contents) || contents.flow) return undefined;
  const step = meant(edit, values, wanted, schema);
  return step && made(new Written(yaml), contents, step, values, schema);
}

/** An edit in terms of one key or one line that is there or isn’t. */
type Step = { at: Path; put: Value } | { at: Path; drop: true } | { at: Path; push: Value };

function meant(edit: FieldEdit, values: Keys, wanted: Keys, schema: z.ZodType): Step | undefined {
  if ('set' in edit) return { at: edit.set, put: edit.value };
  if ('add' in edit) {
    const there = valueAt(values, edit.add);
    if (Array.isArray(there)) return { at: edit.add, push: edit.item };
    if (
      there !== undefined &&
      there !== null &&
      !(typeof there === 'string' && isTextOrList(shapeOf(schema, values, edit.add)))
    )
      return undefined;
    return { at: edit.add, put: valueAt(wanted, edit.add) ?? null };
  }
  // What is left empty goes too.
  let at = edit.remove;
  while (at.length > 1 && valueAt(wanted, at.slice(0, -1)) === undefined) at = at.slice(0, -1);
  return { at, drop: true };
}

function shapeOf(schema: z.ZodType, values: Keys, path: Path): Shape {
  let [shape, value]: [Shape, Value | undefined] = [schema, values];
  for (const step of path) {
    shape = within(shape, step, isKeys(value) ? value : undefined);
    value = valueAt(value, [step]);
  }
  return shape;
}

function made(
  written: Written,
  top: unknown,
  step: Step,
  values: Keys,
  schema: z.ZodType,
): Splice[] | undefined {
  if ('push' in step) {
    const list = nodeAt(top, step.at);
    return isSeq(list) ? addItem(written, list, step.push, shapeOf(schema, values, step.at)) : undefined;
  }
  const [path, last] = [step.at.slice(0, -1), step.at.at(-1)];
  const holder = nodeAt(top, path);
  const shape = shapeOf(schema, values, path);
  if (isSeq(holder) && typeof last === 'number') {
    return 'drop' in step ? dropItem(written, holder, last) : setItem(written, holder, last, step.put, shape);
  }
  if (!isMap(holder) || typeof last !== 'string') return undefined;
  if ('drop' in step) return dropKey(written, holder, last);
  const keys = valueAt(values, path);
  return setKey(written, holder, last, step.put, shape, isKeys(keys) ? keys : {});
}
