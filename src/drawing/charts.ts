// Draws a chart to SVG at build: pages carry a picture of a few kilobytes, and no script.
import { createCanvas, GlobalFonts, type SKRSContext2D, SvgExportFlag } from '@napi-rs/canvas';
import { Chart as ChartJs, registerables } from 'chart.js';
import type { Chart } from '../views/live/pen.ts';
import { escaped } from './escaped.ts';

ChartJs.register(...registerables);
for (const weight of [400, 600]) {
  GlobalFonts.registerFromPath(
    `public/style/fonts/source-sans-3-latin-${weight}-normal.woff2`,
    'Source Sans 3',
  );
}

/** The chart as SVG markup that scales to its column. `title` says in words what it shows; `id` is its own on the page. */
export function chartSvg({ config, width, height }: Chart, title: string, id: string): string {
  const canvas = createCanvas(width, height, SvgExportFlag.RelativePathEncoding);
  const context = canvas.getContext('2d');
  const words = wordsOf(context);
  // With no animation a chart is drawn as it is made, once.
  const chart = new ChartJs(
    Object.assign(canvas, { style: {}, getContext: () => context }) as unknown as HTMLCanvasElement,
    config,
  );
  const svg = canvas.getContent().toString();
  chart.destroy();
  const inner = svg.slice(svg.indexOf('>', svg.indexOf('<svg')) + 1, svg.lastIndexOf('</svg>'));
  const shapes = inner
    .replaceAll(/<rect fill-opacity="0"[^>]*\/>/g, '')
    .replaceAll(/\s*\n\s*/g, '')
    .replaceAll(/\bcl_([0-9a-f]+)\b/g, clipOf(id));
  return `<svg viewBox="0 0 ${width} ${height}" role="img" aria-labelledby="${id}"><title id="${id}">${escaped(title)}</title>${shapes}${words.join('')}</svg>`;
}

/** Names clips after the chart: the canvas counts them on from chart to chart. */
function clipOf(id: string): (written: string) => string {
  const seen: string[] = [];
  return (written) => {
    if (!seen.includes(written)) seen.push(written);
    return `${id}-clip-${seen.indexOf(written)}`;
  };
}

const ANCHOR: Record<string, string> = {
  center: ' text-anchor="middle"',
  right: ' text-anchor="end"',
  end: ' text-anchor="end"',
};
/** How far below its line the foot of the letters lies, in parts of the size. */
const FOOT: Record<string, number> = { top: 0.8, hanging: 0.8, middle: 0.34, bottom: -0.2 };

/** Takes the words out of the drawing: as text of the page they keep its font, its ligatures and a search for them. */
function wordsOf(context: SKRSContext2D): string[] {
  const words: string[] = [];
  context.fillText = (text, x, y) => {
    const { a, b, c, d, e, f } = context.getTransform();
    const size = Number(/([\d.]+)px/.exec(context.font)?.[1] ?? 13);
    const at = [a * x + c * y + e, b * x + d * y + f + size * (FOOT[context.textBaseline] ?? 0)];
    const [left, foot] = at.map((value) => Math.round(value * 10) / 10);
    const bold = /\b(bold|600)\b/.test(context.font) ? ' font-weight="600"' : '';
    words.push(
      `<text x="${left}" y="${foot}" font-size="${size}" fill="${String(context.fillStyle)}"${bold}${ANCHOR[context.textAlign] ?? ''}>${escaped(text)}</text>`,
    );
  };
  return words;
}
