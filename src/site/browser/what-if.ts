// The what-if of an open choice: a reader moves a figure, and the page says again what follows, from the same sums
// that the build used. Runs from a folder, so it is one classic script; without it the page is whole.
import { compareOptions } from '../../estimate/uncertain/choice/compare.ts';
import type { KeptDraws } from '../../estimate/uncertain/kept-draws.ts';
import { costRanges } from '../../views/live/cost-ranges.ts';
import { controlsOf, type Moved, movedSheet, movedText, readMoved } from '../../views/live/moved.ts';
import { expectedWords, movedWords } from '../../views/live/moved-words.ts';
import type { Sheet } from '../../views/live/sheet.ts';
import { sheetWords } from '../../views/live/sheet-words.ts';
import { turnRows } from '../../views/live/turning-words.ts';
import { holdsMoves, writeMoves } from './address.ts';
import { rangesFigure } from './ranges-figure.ts';
import { saidPlaces } from './said-places.ts';
import { slidersOf } from './sliders.ts';

/** How long after the last move it is read aloud and written to the address. */
const SETTLED = 400;

const carried = document.getElementById('sheet')?.textContent;
const section = document.getElementById('what-if');
if (carried && section) start(JSON.parse(carried) as Sheet, section);

function start(sheet: Sheet, section: HTMLElement): void {
  const controls = controlsOf(sheet);
  const sliders = slidersOf(section, controls, sheet);
  const places = saidPlaces();
  const figure = rangesFigure();
  const kept: KeptDraws = new Map();
  const line = section.querySelector<HTMLElement>('#moved');
  const aloud = section.querySelector('#moved-to');
  let shown = '';
  let asked = 0;
  let settling = 0;

  /** Works the choice out with the reader's figures. A move within its bounds leaves it as sound as the build found it. */
  const worked = (moved: Moved) => {
    const now = movedSheet(sheet, moved);
    const compared = compareOptions(now.sums, { seed: now.seed, kept });
    if (!compared.sound) throw new Error('a choice that was moved within its bounds can be compared');
    const { comparison } = compared;
    const ranges = costRanges(now, comparison);
    return { said: sheetWords(now, comparison), turns: turnRows(now, comparison), ranges, sheet: now };
  };

  const show = () => {
    cancelAnimationFrame(asked);
    asked = 0;
    const moved = sliders.moved();
    const words = movedWords(sheet, moved);
    if (movedText(moved) === shown) return;
    shown = movedText(moved);
    if (moved.size > 0) {
      const now = worked(moved);
      places.say(now, words);
      figure.draw(now.ranges, now.sheet);
    } else {
      places.restore();
      figure.restore();
    }
    section.classList.toggle('moved', moved.size > 0);
    if (line) {
      line.textContent = words;
      line.hidden = moved.size === 0;
    }
  };

  const settle = () => {
    show();
    figure.finish();
    writeMoves(sliders.moved());
    const costs = sheet.sums.options.map(({ id }) => ({ id, cost: places.cost(id) }));
    if (aloud) aloud.textContent = expectedWords(sheet, costs);
  };

  const follow = () => {
    if (asked === 0) asked = requestAnimationFrame(show);
    clearTimeout(settling);
    settling = window.setTimeout(settle, SETTLED);
  };

  const fromAddress = () => {
    sliders.set(readMoved(location.hash, controls));
    show();
  };

  section.addEventListener('input', follow);
  section.querySelector('#record-figures')?.addEventListener('click', () => {
    sliders.set(new Map());
    show();
    follow();
  });
  addEventListener('hashchange', () => {
    if (holdsMoves()) fromAddress();
  });
  addEventListener('beforeprint', () => {
    show();
    figure.forPaper();
  });
  addEventListener('afterprint', figure.finish);
  addEventListener('resize', figure.finish);
  section.hidden = false;
  fromAddress();
  figure.finish();
  // Drawn once ahead, while the reader still reads, so that the first move is as quick as the next.
  setTimeout(() => worked(new Map()), SETTLED);
}
