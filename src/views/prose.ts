// A body of Markdown as safe HTML: headings stand below the page's own, and nothing but prose comes through.
import type { Root as HtmlRoot } from 'hast';
import type { Root, RootContent } from 'mdast';
import rehypeSanitize from 'rehype-sanitize';
import rehypeStringify from 'rehype-stringify';
import remarkRehype from 'remark-rehype';
import { unified } from 'unified';
import { once } from '../record/once.ts';

export type { Body } from '../record/body.ts';

const printer = unified().use(remarkRehype).use(rehypeSanitize).use(rehypeStringify).freeze();

/** HTML of a parsed body. Pictures in prose are left out: they belong to the day's list, with words of their own. */
export function proseHtml(tree: Root): string {
  return printer.stringify(printer.runSync(fitted(tree)) as HtmlRoot);
}

/** All words of a body as one text, for the search. */
export function allWords(tree: Root): string {
  return blockWords(fitted(tree));
}

/** The first sentence or two of a body, for lists of days. */
export const firstWords = once((tree: Root): string => {
  const [first] = tree.children.filter(({ type }) => type === 'paragraph');
  const text = first ? wordsOf(first).replace(/\s+/g, ' ').trim() : '';
  if (text.length <= MOST_WORDS) return text;
  const end = Math.max(text.lastIndexOf('. ', MOST_WORDS), text.lastIndexOf('; ', MOST_WORDS));
  if (end > 60) return text[end] === ';' ? `${text.slice(0, end)} …` : text.slice(0, end + 1);
  return `${text.slice(0, text.lastIndexOf(' ', MOST_WORDS))} …`;
});

/** Letters of the first words at most. */
const MOST_WORDS = 180;

function fitted<N extends Root | RootContent>(node: N): N {
  if (!('children' in node)) return { ...node, ...withScheme(node) };
  const children = (node.children as RootContent[])
    .filter(({ type }) => type !== 'image' && type !== 'html')
    .map(fitted);
  const below = node.type === 'heading' ? { depth: Math.min(6, node.depth + 2) } : {};
  return { ...node, ...below, ...withScheme(node), children } as N;
}

/** `//host` would be a folder’s name on a page that is opened from one. */
function withScheme(node: Root | RootContent): { url?: string } {
  return 'url' in node && /^[\\/]{2}/.test(node.url) ? { url: node.url.replace(/^[\\/]+/, 'https://') } : {};
}

function wordsOf(node: RootContent): string {
  if ('value' in node) return node.value;
  return 'children' in node ? node.children.map(wordsOf).join('') : '';
}

/** Blocks stand apart; words within one are joined as they are written. */
function blockWords(node: Root | RootContent): string {
  if (
    !('children' in node) ||
    node.type === 'paragraph' ||
    node.type === 'heading' ||
    node.type === 'tableCell'
  )
    return wordsOf(node as RootContent);
  return node.children.map(blockWords).join(' ');
}
