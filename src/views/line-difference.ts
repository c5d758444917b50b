// What a change does to a text, line by line: shown to the writer before it is made.

/** A line that stays, comes or goes. */
export type DifferenceLine = { how: 'same' | 'added' | 'gone'; text: string };

/** The lines of both texts in order; as many as can be stay the same. */
export function lineDifference(before: string, after: string): DifferenceLine[] {
  const [old, fresh] = [linesOf(before), linesOf(after)];
  const kept = longestCommon(old, fresh);
  const found: DifferenceLine[] = [];
  let [i, j] = [0, 0];
  while (i < old.length || j < fresh.length) {
    const [was, is] = [old[i], fresh[j]];
    if (was !== undefined && is !== undefined && was === is) {
      found.push({ how: 'same', text: is });
      i += 1;
      j += 1;
    } else if (was !== undefined && (is === undefined || at(kept, i + 1, j) >= at(kept, i, j + 1))) {
      found.push({ how: 'gone', text: was });
      i += 1;
    } else {
      found.push({ how: 'added', text: is ?? '' });
      j += 1;
    }
  }
  return found;
}

/** The lines that come and go, marked `+` and `-`, with a line of what is around them. */
export function differenceText(before: string, after: string): string {
  const lines = lineDifference(before, after);
  const near = (n: number) => [n - 1, n, n + 1].some((m) => (lines[m]?.how ?? 'same') !== 'same');
  const sign = { same: ' ', added: '+', gone: '-' };
  return lines.flatMap(({ how, text }, n) => (near(n) ? [`${sign[how]} ${text}`.trimEnd()] : [])).join('\n');
}

function linesOf(text: string): string[] {
  if (text === '') return [];
  return text.replace(/\r?\n$/, '').split(/\r?\n/);
}

/** How many lines the rests of both texts have in common, from each pair of lines on. */
function longestCommon(old: readonly string[], fresh: readonly string[]): number[][] {
  const table = Array.from({ length: old.length + 1 }, () => new Array<number>(fresh.length + 1).fill(0));
  for (let i = old.length - 1; i >= 0; i--) {
    const row = table[i] ?? [];
    for (let j = fresh.length - 1; j >= 0; j--) {
      row[j] =
        old[i] === fresh[j]
          ? at(table, i + 1, j + 1) + 1
          : Math.max(at(table, i + 1, j), at(table, i, j + 1));
    }
  }
  return table;
}

const at = (table: readonly number[][], i: number, j: number) => table[i]?.[j] ?? 0;
