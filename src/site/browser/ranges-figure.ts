// The bars of the choice, drawn anew when a figure was moved. The build's own drawing is kept, and put back.
import { BarController, BarElement, CategoryScale, Chart, LinearScale } from 'chart.js';
import { type CostRange, rangesChart, rangesTitle } from '../../views/live/cost-ranges.ts';
import { FONT, NARROW, SIZE, WIDE } from '../../views/live/pen.ts';
import type { Sheet } from '../../views/live/sheet.ts';

Chart.register(BarController, BarElement, CategoryScale, LinearScale);

export type Figure = {
  /** Draws what can be seen; the rest is left for `finish`. */
  draw: (ranges: readonly CostRange[], sheet: Sheet) => void;
  /** Draws what is not drawn yet, and again what the window has made larger or smaller. */
  finish: () => void;
  /** Draws both sizes as finely as paper wants them. */
  forPaper: () => void;
  /** Puts the build's drawing back. */
  restore: () => void;
};

/** Dots for a unit of the drawing where it can't be seen, and on paper: 300 to an inch of a sheet's width. */
const UNSEEN = 2;
const PAPER = 3;

export function rangesFigure(): Figure {
  const panels = [panelIn('wide', WIDE), panelIn('narrow', NARROW)].filter((panel) => panel !== undefined);
  let now: Now | undefined;
  const each = (paint: (panel: Panel, now: Now) => void) => {
    if (now) for (const panel of panels) paint(panel, now);
  };
  const finish = () => each((panel, now) => panel.paint(now, panel.dots() || UNSEEN));
  // A canvas waits for no font: it is drawn again when they are there.
  const fonts = [400, 600].map((weight) => document.fonts.load(`${weight} ${SIZE}px ${FONT.family}`));
  Promise.all(fonts).then(() => {
    if (now) now = { ...now };
    finish();
  });
  return {
    draw: (ranges, sheet) => {
      now = { ranges, sheet };
      each((panel, now) => {
        const dots = panel.dots();
        if (dots > 0) panel.paint(now, dots);
      });
    },
    finish,
    forPaper: () => each((panel, now) => panel.paint(now, PAPER)),
    restore: () => {
      now = undefined;
      for (const panel of panels) panel.restore();
    },
  };
}

type Now = { ranges: readonly CostRange[]; sheet: Sheet };

type Panel = {
  /** Dots of the screen for a unit of the drawing; 0 where it isn't shown. */
  dots: () => number;
  paint: (now: Now, dots: number) => void;
  restore: () => void;
};

function panelIn(name: string, units: number): Panel | undefined {
  const place = document.querySelector<HTMLElement>(`#ranges .${name}`);
  if (!place) return undefined;
  const built = [...place.childNodes];
  const canvas = document.createElement('canvas');
  canvas.setAttribute('role', 'img');
  let chart: Chart | undefined;
  let painted: { now: Now; dots: number } | undefined;
  return {
    dots: () => (place.clientWidth / units) * devicePixelRatio,
    paint: (now, dots) => {
      if (painted?.now === now && painted.dots === dots) return;
      painted = { now, dots };
      chart?.destroy();
      const { config, width, height } = rangesChart(now.ranges, now.sheet.currency, units);
      Object.assign(canvas, { width, height });
      // With a size of its own the drawing leaves this to the column, as the build's drawing does.
      Object.assign(canvas.style, { width: '100%', height: 'auto' });
      canvas.setAttribute('aria-label', rangesTitle(now.ranges));
      chart = new Chart(canvas, { ...config, options: { ...config.options, devicePixelRatio: dots } });
      if (canvas.parentElement !== place) place.replaceChildren(canvas);
    },
    restore: () => {
      painted = undefined;
      place.replaceChildren(...built);
    },
  };
}
