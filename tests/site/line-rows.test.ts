import { expect, it } from 'vitest';
import { lineRows } from '../../src/site/line-rows.ts';

const ROW = {
  day: 'March 3, 2025',
  dayPage: 'day/2025-03-03.html',
  text: '<b>Stripped</b> & sanded',
  notes: 'both "sides"',
  part: 'Cowl',
  partPage: 'part/cowl.html',
  time: '3 h 30 m',
  charged: '280.00',
  cost: '98.00',
  place: 'log/2025-03-03.md:3',
};
const ALL = { parts: true, timed: true, shop: true };

it('draws a line with its links, and nothing of its words as markup', () => {
  expect(lineRows([ROW], ALL, 'lines/kind/labour.html')).toBe(
    '<tr><td class="nw"><a href="../../day/2025-03-03.html">March 3, 2025</a></td>' +
      '<td>&lt;b&gt;Stripped&lt;/b&gt; &amp; sanded<span class="note"> (both &quot;sides&quot;)</span>' +
      ' <span class="narrow note">3 h 30 m, Cowl, log/2025-03-03.md:3</span></td>' +
      '<td class="wide"><a href="../../part/cowl.html">Cowl</a></td>' +
      '<td class="n wide">3 h 30 m</td><td class="n">280.00</td>' +
      '<td class="n wide">98.00</td><td class="nw wide">log/2025-03-03.md:3</td></tr>',
  );
});

it('leaves out what a table or its reader hasn’t, though the same line was drawn with it before', () => {
  lineRows([ROW], ALL, 'lines/kind/labour.html');
  const bare = lineRows([ROW], { parts: false, timed: false, shop: false }, 'lines.html');
  expect(bare).toContain('<a href="day/2025-03-03.html">');
  for (const not of ['part/cowl.html', 'Cowl', 'log/', '98.00', 'wide']) expect(bare).not.toContain(not);
});
