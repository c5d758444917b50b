// The words of a file for a later reader: without remarks, without pictures that are named there, and without links
// that lead nowhere once the folder has left the shop.
import type { Root, RootContent } from 'mdast';
import { readBody } from '../../record/body.ts';

type Node = Root | RootContent;
type Cut = { from: number; to: number; instead: string };

/** The Markdown without what stays behind, and without the names that `nameless` takes out. */
export function proseOf(file: string, markdown: string, nameless: <T>(value: T) => T): string {
  const { tree } = readBody(file, markdown, 1).body;
  const left = withCuts(markdown, cutsIn(tree, markdown, new Set(namesUsed(tree))));
  const again = readBody(file, left, 1).body.tree;
  const words = nameless(withCuts(left, brokenNames(again, left, nameless)));
  return words.trim() === '' ? '' : `${words.trimEnd()}\n`;
}

function withCuts(text: string, cuts: readonly Cut[]): string {
  return cuts
    .toSorted((a, b) => b.from - a.from)
    .reduce((left, { from, to, instead }) => left.slice(0, from) + instead + left.slice(to), text);
}

/** Runs of words that hold a name which the signs of a quote, or a backslash, break where it is written. */
function brokenNames(node: Node, markdown: string, nameless: <T>(value: T) => T): Cut[] {
  if ('children' in node) return node.children.flatMap((child) => brokenNames(child, markdown, nameless));
  const span = spanOf(node);
  if (node.type !== 'text' || !span || markdown.slice(span.from, span.to) === node.value) return [];
  const said = nameless(node.value);
  return said === node.value ? [] : [{ ...span, instead: escaped(said) }];
}

/** Words as Markdown that means them and nothing else. */
const escaped = (words: string) => words.replaceAll('\n', ' ').replace(/[\\`*_{}[\]<>&|~#]/g, '\\$&');

/** Remarks, pictures, addresses within the shop's folder, and definitions that nothing uses. */
function cutsIn(node: Node, markdown: string, used: ReadonlySet<string>): Cut[] {
  const span = spanOf(node);
  if (span && node.type === 'html') return [{ ...span, instead: '' }];
  if (span && (node.type === 'image' || node.type === 'imageReference')) {
    return [{ ...span, instead: node.alt ? `(picture: ${node.alt})` : '' }];
  }
  if (span && node.type === 'definition' && !(used.has(node.identifier) && isOutside(node.url))) {
    return [{ ...span, instead: '' }];
  }
  if (span && node.type === 'link' && !isOutside(node.url)) {
    const words = node.children.map((child) => proseWithin(child, markdown, used)).join('');
    return [{ ...span, instead: words }];
  }
  return 'children' in node ? node.children.flatMap((child) => cutsIn(child, markdown, used)) : [];
}

/** A piece of the prose with its own cuts made, for what stands within something that is itself replaced. */
function proseWithin(node: RootContent, markdown: string, used: ReadonlySet<string>): string {
  const span = spanOf(node);
  if (!span) return '';
  return cutsIn(node, markdown, used)
    .sort((a, b) => b.from - a.from)
    .reduce(
      (text, { from, to, instead }) => text.slice(0, from - span.from) + instead + text.slice(to - span.from),
      markdown.slice(span.from, span.to),
    );
}

function namesUsed(node: Node): string[] {
  if (node.type === 'linkReference') return [node.identifier];
  return 'children' in node ? node.children.flatMap(namesUsed) : [];
}

function spanOf({ position }: Node): { from: number; to: number } | undefined {
  const [from, to] = [position?.start.offset, position?.end.offset];
  return from === undefined || to === undefined ? undefined : { from, to };
}

const isOutside = (url: string) => /^(?:https?|mailto):/i.test(url);
