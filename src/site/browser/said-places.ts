// The places of the page that say what follows from the figures. What the build wrote there is kept, and put back.
import type { CostRange } from '../../views/live/cost-ranges.ts';
import type { Sentence, SheetWords } from '../../views/live/sheet-words.ts';
import type { TurnRow } from '../../views/live/turning-words.ts';

export type Said = { said: SheetWords; turns: readonly TurnRow[]; ranges: readonly CostRange[] };

export type Places = {
  /** `moved` says what was moved; on paper it stands before the sentences, on the screen beside the sliders. */
  say: (now: Said, moved: string) => void;
  /** Puts the words of the build back. */
  restore: () => void;
  /** The expected cost of an option as the page has it. */
  cost: (option: string) => string;
};

export function saidPlaces(): Places {
  const figures = [...document.querySelectorAll<HTMLElement>('[data-said]')];
  const cost = (option: string) =>
    figures.find(({ dataset }) => dataset.said === `${option}.cost`)?.textContent?.trim() ?? '';
  // Among the sliders the costs stand once more, which the build left to the table.
  const again = [...document.querySelectorAll<HTMLElement>('[data-comes]')];
  for (const place of again) place.textContent = cost(place.dataset.comes ?? '');
  const sentences = document.getElementById('said');
  const [turns, ranges] = [rowsOf('turns'), rowsOf('ranges-table')];
  const places = [...figures, ...again, ...(sentences ? [sentences] : []), ...turns.flat(), ...ranges.flat()];
  const built = places.map((place) => [...place.childNodes]);
  return {
    say: (now, moved) => {
      const texts = new Map<string, string>(
        now.said.options.flatMap(({ id, ...said }) =>
          Object.entries(said).map(([what, text]) => [`${id}.${what}`, text]),
        ),
      );
      for (const place of figures) write(place, texts.get(place.dataset.said ?? ''));
      for (const place of again) write(place, texts.get(`${place.dataset.comes}.cost`));
      const line = document.createElement('p');
      line.className = 'with';
      line.textContent = moved;
      sentences?.replaceChildren(line, ...now.said.sentences.map(paragraph));
      fill(
        turns,
        now.turns.map((row) => [row.what, row.now, row.turns]),
      );
      fill(
        ranges,
        now.ranges.map((range) => [range.name, range.lowText, range.middleText, range.highText]),
      );
    },
    restore: () => {
      places.forEach((place, i) => {
        place.replaceChildren(...(built[i] ?? []));
      });
    },
    cost,
  };
}

/** The cells of a table's body, row by row; where a cell holds its figure in italics, the italics. */
function rowsOf(table: string): Element[][] {
  return [...document.querySelectorAll(`#${table} tbody tr`)].map((row) =>
    [...row.children].map((cell) => cell.firstElementChild ?? cell),
  );
}

function fill(rows: readonly Element[][], texts: readonly string[][]): void {
  rows.forEach((cells, i) => {
    cells.forEach((cell, j) => {
      write(cell, texts[i]?.[j]);
    });
  });
}

function write(place: Element, text: string | undefined): void {
  if (text !== undefined && place.textContent !== text) place.textContent = text;
}

function paragraph({ head, text }: Sentence): HTMLElement {
  const strong = document.createElement('strong');
  strong.textContent = head;
  const pieces = text.map((piece) => {
    if (typeof piece === 'string') return piece;
    const estimate = document.createElement('i');
    estimate.className = 'est';
    estimate.textContent = piece.estimate;
    return estimate;
  });
  const whole = document.createElement('p');
  whole.append(strong, ' ', ...pieces);
  return whole;
}
