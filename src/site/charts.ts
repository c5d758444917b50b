// Draws a chart to SVG at build: pages carry a picture of a kilobyte or two, and no script.
import { createCanvas, GlobalFonts, SvgExportFlag } from '@napi-rs/canvas';
import { Chart as ChartJs, registerables } from 'chart.js';
import type { Chart } from '../views/charts.ts';

ChartJs.register(...registerables);
GlobalFonts.registerFromPath('public/style/fonts/source-sans-3-latin-400-normal.woff2', 'Source Sans 3');

/** The chart as SVG markup that scales to its column. `title` says in words what it shows. */
export function chartSvg({ config, width, height }: Chart, title: string): string {
  const canvas = createCanvas(width, height, SvgExportFlag.RelativePathEncoding);
  const chart = new ChartJs(Object.assign(canvas, { style: {} }) as unknown as HTMLCanvasElement, config);
  chart.draw();
  const svg = canvas.getContent().toString();
  chart.destroy();
  const inner = svg.slice(svg.indexOf('>', svg.indexOf('<svg')) + 1, svg.lastIndexOf('</svg>'));
  const drawn = inner
    .replaceAll(/<rect fill-opacity="0"[^>]*\/>/g, '')
    .replaceAll(/ xml:space="preserve"/g, '');
  return `<svg viewBox="0 0 ${width} ${height}" role="img" aria-label="${escaped(title)}">${drawn}</svg>`;
}

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('"', '&quot;').replaceAll('<', '&lt;');
}
