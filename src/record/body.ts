// The words of a file: Markdown with GFM tables and task lists. Raw HTML is never published, so it is a problem.
import type { Root, RootContent } from 'mdast';
import remarkGfm from 'remark-gfm';
import remarkParse from 'remark-parse';
import { unified } from 'unified';
import type { Problem } from './place.ts';
import { plainWords } from './plain-words.ts';
import { short } from './short.ts';

/** The body as written, the line of the file it begins in, and its parsed tree. */
export type Body = { markdown: string; line: number; tree: Root };

const plainReader = unified().use(remarkParse).freeze();
const reader = unified().use(remarkParse).use(remarkGfm).freeze();

/**
 * Every extension of GFM needs one of these: a table a bar, or a colon at its dashes; a struck word a tilde; a footnote
 * and a task a bracket; a link that is only written out `http`, `www` or an at sign, which may be written as an entity.
 * Without them the plain reader reads the same, in a fifth of the time.
 */
const GFM = /[|~@[&]|:-|-:|www|http/i;

/** Parses a body. `line` is the line of the file in which it begins. */
export function readBody(file: string, markdown: string, line: number): { body: Body; problems: Problem[] } {
  const tree = parsed(markdown);
  const deep = tree === undefined ? { line: 1, column: 1 } : tooDeep(tree);
  if (tree && !deep) return { body: { markdown, line, tree }, problems: rawHtml(tree, file, line) };
  return {
    body: { markdown, line, tree: { type: 'root', children: [] } },
    problems: [
      {
        rule: 'words-too-deep',
        severity: 'error',
        place: { file, line: line - 1 + (deep?.line ?? 1), column: deep?.column ?? 1 },
        reason: 'The words are nested too deep to be read.',
        mend: 'Take out the signs that repeat in the line, such as `>`, `-` or `*`.',
      },
    ],
  };
}

/**
 * A body whose tree no longer says where each of its pieces stands: nobody asks once it is read. The tree that was given
 * is changed.
 */
export function withoutPlaces(body: Body): Body {
  const strip = (node: Root | RootContent) => {
    delete node.position;
    if ('children' in node) node.children.forEach(strip);
  };
  strip(body.tree);
  return body;
}

/** The tree of a body; nothing where it is nested deeper than the parser can follow. */
function parsed(markdown: string): Root | undefined {
  try {
    return plainWords(markdown) ?? (GFM.test(markdown) ? reader : plainReader).parse(markdown);
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

/** Deeper than any page shows, and not as deep as would fill the stack of what walks a tree. */
const MOST_DEEP = 60;

/** Where a tree first goes too deep. It is walked level by level, since it may be deeper than a stack. */
function tooDeep(tree: Root): { line: number; column: number } | undefined {
  let level: (Root | RootContent)[] = [tree];
  for (let depth = 0; level.length > 0; depth++) {
    const [first] = level;
    if (depth > MOST_DEEP) return first?.position?.start ?? { line: 1, column: 1 };
    level = level.flatMap((node) => ('children' in node ? node.children : []));
  }
  return undefined;
}

function rawHtml(node: Root | RootContent, file: string, line: number): Problem[] {
  if (node.type === 'html' && !/^<!--[\s\S]*-->$/.test(node.value.trim())) {
    const at = node.position?.start ?? { line: 1, column: 1 };
    return [
      {
        rule: 'raw-html',
        severity: 'error',
        place: { file, line: at.line + line - 1, column: at.column },
        reason: `Unexpected HTML \`${short(node.value.split('\n')[0] ?? '', 40)}\`: it would not be shown.`,
        mend: 'Write it in Markdown, or put a backslash before the `<`.',
      },
    ];
  }
  return 'children' in node ? node.children.flatMap((child) => rawHtml(child, file, line)) : [];
}
