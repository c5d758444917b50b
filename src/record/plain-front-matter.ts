// Front matter as nearly everybody writes it, read ten times as fast as by the parser that knows all of YAML: no anchors,
// tags, comments, escapes, empty values, nor a text that goes on in the next line. Whatever is in doubt isn't read here. A
// loader that keeps no places tells where each value begins; each one is held against the text that stands there.
import { FAILSAFE_SCHEMA, load, YAMLException } from 'js-yaml';
import type { Path } from './front-matter.ts';
import type { Place } from './place.ts';

/** A value with the place where it begins, in letters from the start of the front matter. */
export type PlainNode = { from: number } & (
  | { text: string }
  | { items: PlainNode[] }
  | { keys: Map<string, { from: number; value: PlainNode }> }
);

/** Signs that change how the rest is read, where they begin a word; those that lines or words are hidden by; `\`. */
const DOUBTFUL =
  /(?:^|[\s[{,:-])[&*!|>%@`?]|(?:^|\W)#|^(?:---|\.\.\.)|[^\n\x20-\x7e\u00a1-\u2027\u202a-\ud7ff\ue000-\ufefe]|\\/m;
/** Keys that mean themselves and nothing else. */
const KEY = /^(?!(?:true|false|null|place)$)[a-z][a-z\d-]{0,60}$/;
const NULL = /^(?:~|null|Null|NULL|)$/;
/** What lies between two values. */
const GAP = /[ \n]*/y;
const MOST_KEYS = 1000;
const DEEPEST = 8;

class Doubt extends Error {}

/** What was read of a node while it is open; `said` is the loader's own value of it. */
type Open = { from: number; inFlow: boolean; within: Closed[] };
type Closed = { node: PlainNode; said: unknown };

/** The front matter as a tree; nothing where it is in doubt, or isn't a set of keys. */
export function plainFrontMatter(raw: string): (PlainNode & { keys: object }) | undefined {
  if (raw.trim() === '' || DOUBTFUL.test(raw)) return undefined;
  const open: Open[] = [];
  let top: Closed | undefined;
  try {
    load(raw, {
      schema: FAILSAFE_SCHEMA,
      listener: (event, { position, result }) => {
        if (event === 'open') {
          const around = open.at(-1);
          const inFlow = around !== undefined && (around.inFlow || isFlow(raw, around.from));
          open.push({ from: after(raw, position), inFlow, within: [] });
          return;
        }
        const own = open.pop() as Open;
        top = closed(raw, own, position, result);
        open.at(-1)?.within.push(top);
      },
    });
  } catch (error) {
    // A doubt, or a mistake: the parser that knows all of YAML says where it is.
    if (error instanceof Doubt || error instanceof YAMLException || error instanceof RangeError)
      return undefined;
    throw error;
  }
  const node = top?.node;
  return node && 'keys' in node && depthOf(node) <= DEEPEST ? node : undefined;
}

/** Where the next value begins. */
function after(raw: string, position: number): number {
  GAP.lastIndex = position;
  GAP.test(raw);
  return GAP.lastIndex;
}

const isFlow = (raw: string, at: number) => raw[at] === '[' || raw[at] === '{';

/** Throws `Doubt` where what the loader says isn't plainly what stands there. */
function closed(raw: string, { from, inFlow, within }: Open, end: number, said: unknown): Closed {
  // What might have been a key was looked at twice.
  const [only] = within;
  if (only && within.length === 1 && only.said === said && only.node.from === from) return only;
  if (typeof said === 'string') return { said, node: textAt(raw, from, inFlow, said) };
  if (typeof said !== 'object' || said === null) throw new Doubt();
  if (isFlow(raw, from) && raw.slice(from, end).includes('\n')) throw new Doubt();
  return { said, node: Array.isArray(said) ? listOf(from, within, said) : keysOf(from, within, said) };
}

function textAt(raw: string, from: number, inFlow: boolean, said: string): PlainNode {
  const quote = raw[from] === '"' || raw[from] === "'" ? raw[from] : '';
  const end = from + quote.length + said.length;
  const ends = raw.startsWith(said, from + quote.length) && raw.startsWith(quote, end);
  const [next] = /^ *([^ ]?)/.exec(raw.slice(end + quote.length, end + quote.length + 80))?.slice(1) ?? [];
  const isEnd = next === '' || next === '\n' || next === ':' || (inFlow && /[,\]}]/.test(next ?? ''));
  if (!ends || !isEnd || said.includes('\n') || (quote === '' && NULL.test(said))) throw new Doubt();
  return { from, text: said };
}

function listOf(from: number, within: readonly Closed[], said: readonly unknown[]): PlainNode {
  if (said.length !== within.length || within.some((one, i) => one.said !== said[i])) throw new Doubt();
  return { from, items: within.map(({ node }) => node) };
}

function keysOf(from: number, within: readonly Closed[], said: object): PlainNode {
  const keys = new Map<string, { from: number; value: PlainNode }>();
  for (let i = 0; i < within.length; i += 2) {
    const [key, value] = [within[i], within[i + 1]];
    if (!key || !value || !('text' in key.node) || !KEY.test(key.node.text)) throw new Doubt();
    if (said[key.node.text as keyof typeof said] !== value.said) throw new Doubt();
    keys.set(key.node.text, { from: key.node.from, value: value.node });
  }
  const count = Object.keys(said).length;
  if (count !== keys.size || 2 * count !== within.length || count > MOST_KEYS) throw new Doubt();
  return { from, keys };
}

function depthOf(node: PlainNode): number {
  if ('text' in node) return 0;
  const within = 'items' in node ? node.items : [...node.keys.values()].map(({ value }) => value);
  return 1 + within.reduce((deepest, one) => Math.max(deepest, depthOf(one)), 0);
}

/** Its plain values, each set of keys inside a list with its place. */
export function plainValues(node: PlainNode, placeOf: (offset: number) => Place): unknown {
  if ('text' in node) return node.text;
  if ('keys' in node) {
    return Object.fromEntries([...node.keys].map(([key, { value }]) => [key, plainValues(value, placeOf)]));
  }
  return node.items.map((item) => {
    const value = plainValues(item, placeOf);
    return 'keys' in item ? Object.assign(value as object, { place: placeOf(item.from) }) : value;
  });
}

/** Where the value at a path begins, or its key; of a path that isn't there, the nearest thing around it. */
export function plainOffset(top: PlainNode, path: Path, key: boolean): number {
  let at = { from: top.from, value: top };
  for (const [depth, step] of path.entries()) {
    const next = child(at.value, step);
    if (!next) return at.value.from;
    if (key && depth === path.length - 1) return next.from;
    at = next;
  }
  return at.value.from;
}

function child(node: PlainNode, step: string | number) {
  if ('keys' in node) return typeof step === 'string' ? node.keys.get(step) : undefined;
  const value = 'items' in node ? node.items[Number(step)] : undefined;
  return value && { from: value.from, value };
}
