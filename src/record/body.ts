// The words of a file: Markdown with GFM tables and task lists. Raw HTML is never published, so it is a problem.
import type { Root, RootContent } from 'mdast';
import remarkGfm from 'remark-gfm';
import remarkParse from 'remark-parse';
import { unified } from 'unified';
import type { Problem } from './place.ts';

/** The body as written, the line of the file it begins in, and its parsed tree. */
export type Body = { markdown: string; line: number; tree: Root };

const reader = unified().use(remarkParse).use(remarkGfm).freeze();

/** Parses a body. `line` is the line of the file in which it begins. */
export function readBody(file: string, markdown: string, line: number): { body: Body; problems: Problem[] } {
  try {
    const tree = reader.parse(markdown);
    return { body: { markdown, line, tree }, problems: rawHtml(tree, file, line) };
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return {
      body: { markdown, line, tree: { type: 'root', children: [] } },
      problems: [
        {
          rule: 'front-matter',
          severity: 'error',
          place: { file, line, column: 1 },
          reason: 'The words are nested too deep to be read.',
          mend: 'Take out the signs that repeat at the start of a line, such as `>`.',
        },
      ],
    };
  }
}

function rawHtml(node: Root | RootContent, file: string, line: number): Problem[] {
  if (node.type === 'html' && !/^<!--[\s\S]*-->$/.test(node.value.trim())) {
    const at = node.position?.start ?? { line: 1, column: 1 };
    return [
      {
        rule: 'raw-html',
        severity: 'error',
        place: { file, line: at.line + line - 1, column: at.column },
        reason: `Unexpected HTML \`${node.value.split('\n')[0]?.slice(0, 40)}\`: it would not be shown.`,
        mend: 'Write it in Markdown, or put a backslash before the `<`.',
      },
    ];
  }
  return 'children' in node ? node.children.flatMap((child) => rawHtml(child, file, line)) : [];
}
