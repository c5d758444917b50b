// Adds pictures to the text of a day's entry, and touches nothing else in it: every line that was there stays as it
// was, byte for byte.
import { isMap, isScalar, isSeq, type Node, parseDocument, type YAMLMap, type YAMLSeq } from 'yaml';
import { splitFrontMatter } from '../../record/front-matter.ts';

/** The text of a new entry that holds nothing but pictures. */
export function entryWith(files: readonly string[]): string {
  return inFront('', files, '\n') ?? '';
}

/**
 * The entry with these pictures at the end of its `photos`, each to be captioned; one that stands there already
 * isn't added again. Nothing when the front matter is written in a way that can't be added to safely.
 */
export function withPhotos(text: string, files: readonly string[]): string | undefined {
  const before = splitFrontMatter('', text);
  const there = new Set(listed(before.values.photos).map(({ file }) => file));
  const fresh = files.filter((file) => !there.has(file));
  if (fresh.length === 0) return text;
  const eol = text.includes('\r\n') ? '\r\n' : '\n';
  const found = /^\uFEFF?---[ \t]*\r?\n([\s\S]*?)(?<=\n)(?=---[ \t]*(?:\r?\n|$))/.exec(text);
  const end = found?.[0].length ?? 0;
  const yaml = found?.[1];
  const added = yaml === undefined ? inFront(text, fresh, eol) : inYaml(yaml, fresh, eol);
  if (added === undefined) return undefined;
  const whole = yaml === undefined ? added : text.slice(0, end - yaml.length) + added + text.slice(end);
  return isSameBut(text, whole, fresh) ? whole : undefined;
}

/** Front matter for a text that has none. */
function inFront(text: string, files: readonly string[], eol: string): string | undefined {
  if (/^\uFEFF?---/.test(text)) return undefined;
  const mark = text.startsWith('\uFEFF') ? '\uFEFF' : '';
  const body = text.slice(mark.length);
  const gap = body === '' || /^\r?\n/.test(body) ? '' : eol;
  return `${mark}---${eol}photos:${eol}${blockLines(files, '  ', eol)}---${eol}${gap}${body}`;
}

function inYaml(yaml: string, files: readonly string[], eol: string): string | undefined {
  const { contents, errors } = parseDocument(yaml, { logLevel: 'silent' });
  if (errors.length > 0) return undefined;
  if (contents === null) return `${yaml}photos:${eol}${blockLines(files, '  ', eol)}`;
  if (!isMap(contents) || contents.flow) return undefined;
  const pair = (contents as YAMLMap).items.find(({ key }) => isScalar(key) && key.value === 'photos');
  const indent = ' '.repeat(columnOf(yaml, (contents.range ?? [0])[0]));
  if (!pair) return `${yaml}${indent}photos:${eol}${blockLines(files, `${indent}  `, eol)}`;
  const list = pair.value as Node | null;
  if (list === null || (isScalar(list) && list.value === null)) {
    const at = lineEnd(yaml, (pair.key as Node).range?.[1] ?? 0);
    return yaml.slice(0, at) + blockLines(files, `${indent}  `, eol) + yaml.slice(at);
  }
  if (!isSeq(list)) return undefined;
  return list.flow ? inFlow(yaml, list, files) : inBlock(yaml, list, files, eol);
}

/** Behind the last line of a list, with the comments that are set in under it. */
function inBlock(yaml: string, list: YAMLSeq, files: readonly string[], eol: string): string | undefined {
  const [first, last] = [list.items[0] as Node | undefined, list.items.at(-1) as Node | undefined];
  if (!first?.range || !last?.range) return undefined;
  const dash = columnOf(yaml, yaml.lastIndexOf('-', first.range[0]));
  let at = lineEnd(yaml, yaml.slice(0, last.range[1]).trimEnd().length);
  for (let comment = commentAt(yaml, at, dash); comment; comment = commentAt(yaml, at, dash)) at += comment;
  return yaml.slice(0, at) + blockLines(files, ' '.repeat(dash), eol) + yaml.slice(at);
}

/** Inside the brackets of a list that is written in one line. */
function inFlow(yaml: string, list: YAMLSeq, files: readonly string[]): string {
  const last = list.items.at(-1) as Node | undefined;
  const at = last?.range?.[1] ?? (list.range?.[0] ?? 0) + 1;
  const items = files.map((file) => `{ file: ${scalar(file)} }`).join(', ');
  return `${yaml.slice(0, at)}${last ? ', ' : ''}${items}${yaml.slice(at)}`;
}

/** Empty keys show the writer what is still to be said. */
function blockLines(files: readonly string[], indent: string, eol: string): string {
  return files
    .map((file) =>
      [`- file: ${scalar(file)}`, '  caption:', '  alt:'].map((line) => `${indent}${line}${eol}`).join(''),
    )
    .join('');
}

const scalar = (file: string) => (/^[A-Za-z][\w./-]*$/.test(file) ? file : JSON.stringify(file));

/** How long the comment line is that stands here, set in at least as far as the list; 0 when none does. */
function commentAt(yaml: string, at: number, dash: number): number {
  const found = /^( *)#.*(?:\n|$)/.exec(yaml.slice(at));
  const set = found?.[1]?.length ?? 0;
  return found && set > 0 && set >= dash ? found[0].length : 0;
}

const columnOf = (yaml: string, at: number) => at - (yaml.lastIndexOf('\n', at - 1) + 1);
const lineEnd = (yaml: string, at: number) => yaml.indexOf('\n', at) + 1 || yaml.length;

/** Read back: the same body and the same fields, with these pictures at the end of the list. */
function isSameBut(before: string, after: string, files: readonly string[]): boolean {
  const [was, is] = [splitFrontMatter('', before), splitFrontMatter('', after)];
  if (was.broken || is.broken || was.body.markdown.trim() !== is.body.markdown.trim()) return false;
  const wanted = {
    ...was.values,
    photos: [...listed(was.values.photos), ...files.map((file) => ({ file }))],
  };
  return plain(is.values) === plain(wanted);
}

function listed(photos: unknown): { file?: unknown }[] {
  return Array.isArray(photos) ? photos : [];
}

/** Values without their places, keys in order. */
function plain(values: unknown): string {
  return JSON.stringify(values, (key, value: unknown) => {
    if (key === 'place') return undefined;
    if (typeof value !== 'object' || value === null || Array.isArray(value)) return value;
    return Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)));
  });
}
