// A body of Markdown as blocks that a printer understands. Pictures in prose are left out, as on the pages: they
// belong to the day's list, with words of their own.
import type { PhrasingContent, Root, RootContent } from 'mdast';

/** A run of text in one hand. */
export type Span = { text: string; strong?: true; em?: true; code?: true; struck?: true };

export type Block =
  | { kind: 'words'; spans: Span[] }
  | { kind: 'heading'; spans: Span[] }
  | { kind: 'list'; ordered: boolean; start: number; items: Block[][] }
  | { kind: 'quote'; blocks: Block[] }
  | { kind: 'code'; text: string }
  | { kind: 'table'; heads: Span[][]; rows: Span[][][] };

/** The blocks of a parsed body. */
export function blocksOf(tree: Root): Block[] {
  return tree.children.flatMap(blockOf);
}

function blockOf(node: RootContent): Block[] {
  switch (node.type) {
    case 'paragraph': {
      const spans = spansOf(node.children);
      return spans.length > 0 ? [{ kind: 'words', spans }] : [];
    }
    case 'heading':
      return [{ kind: 'heading', spans: spansOf(node.children) }];
    case 'list':
      return [
        {
          kind: 'list',
          ordered: node.ordered === true,
          start: node.start ?? 1,
          items: node.children.map(({ checked, children }) => {
            const blocks = children.flatMap(blockOf);
            return typeof checked === 'boolean' ? ticked(blocks, checked) : blocks;
          }),
        },
      ];
    case 'blockquote':
      return [{ kind: 'quote', blocks: node.children.flatMap(blockOf) }];
    case 'code':
      return [{ kind: 'code', text: node.value }];
    case 'table': {
      const [head, ...rows] = node.children.map((row) => row.children.map((cell) => spansOf(cell.children)));
      return [{ kind: 'table', heads: head ?? [], rows }];
    }
    case 'footnoteDefinition': {
      const blocks = node.children.flatMap(blockOf);
      return [{ kind: 'words', spans: [{ text: `Note ${node.identifier}:`, em: true }] }, ...blocks];
    }
    default:
      return [];
  }
}

/** A box of a task list in words, since not every hand has the sign for it. */
function ticked(blocks: Block[], done: boolean): Block[] {
  const sign: Span = { text: done ? 'Done: ' : 'To do: ', em: true };
  const [first, ...rest] = blocks;
  return first?.kind === 'words'
    ? [{ ...first, spans: [sign, ...first.spans] }, ...rest]
    : [{ kind: 'words', spans: [sign] }, ...blocks];
}

type Hand = Omit<Span, 'text'>;

function spansOf(nodes: readonly PhrasingContent[], hand: Hand = {}): Span[] {
  return nodes.flatMap((node): Span[] => {
    switch (node.type) {
      case 'text':
        return [{ text: node.value.replaceAll('\n', ' '), ...hand }];
      case 'inlineCode':
        return [{ text: node.value, ...hand, code: true }];
      case 'break':
        return [{ text: ' ', ...hand }];
      case 'strong':
        return spansOf(node.children, { ...hand, strong: true });
      case 'emphasis':
        return spansOf(node.children, { ...hand, em: true });
      case 'delete':
        return spansOf(node.children, { ...hand, struck: true });
      case 'link':
        return [...spansOf(node.children, hand), ...addressOf(node.url, node.children, hand)];
      case 'linkReference':
        return spansOf(node.children, hand);
      case 'footnoteReference':
        return [{ text: ` (note ${node.identifier})`, ...hand }];
      default:
        return [];
    }
  });
}

/** On paper an address must be read; it isn't said twice. */
function addressOf(url: string, children: readonly PhrasingContent[], hand: Hand): Span[] {
  const said = spansOf(children)
    .map(({ text }) => text)
    .join('');
  return /^https?:/i.test(url) && said !== url ? [{ text: ` (${url})`, ...hand }] : [];
}
