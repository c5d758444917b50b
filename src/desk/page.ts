// The one page of the desk. It can be read without script; writing is its script’s.
import { dayText } from '../figures/days.ts';
import type { Told } from './browser/told.ts';
import { dataText, escaped } from './html.ts';

/** What frames the entry: the car, the days that may be chosen, those typed and not written, and the drawing’s inner markup. */
export type Around = {
  car: string;
  entries: readonly string[];
  drafts: readonly string[];
  today: string;
  drawing: string;
};

export function deskPage(told: Told, { car, entries, drafts, today, drawing }: Around): string {
  const title = told.read === '' ? 'A new entry' : 'An entry that is there';
  return framed(
    `${dayText(told.day)}: the desk`,
    car,
    `<div class="row top"><div class="m"><p>${title}</p><p class="file">${escaped(told.file)}</p></div><div class="c">
<h1>${escaped(dayText(told.day))}</h1>
<form class="days" method="get" action="/"><label for="day">Another day</label> <input type="date" id="day" name="day" value="${told.day}" max="${today}" required> <button>Open it</button></form>
<details class="older"><summary>Entries that are there</summary><ul>${entries
      .map(
        (entry) =>
          `<li><a href="/?day=${entry}"${entry === told.entry ? ' aria-current="page"' : ''}>${entry}</a></li>`,
      )
      .join('')}</ul></details>
${drafts.length === 0 ? '' : `<p>Typed and not written yet: ${drafts.map((entry) => `<a href="/?day=${entry}">${entry}</a>`).join(', ')}.</p>`}
</div></div>
<div id="reading"><p class="small">Writing here needs script. Without it this page can be read; a day can be written by hand or with npm run log.</p>${reading(told)}</div>
<div id="desk" hidden></div>
<template id="plan"><svg class="dwg" viewBox="60 30 1720 740" role="group" aria-label="The car from above: choose a part">${drawing}</svg></template>
<script type="application/json" id="told">${dataText(told)}</script>`,
    '<script src="/script/desk.js" defer></script>',
  );
}

/** The page that asks for the code. */
export function pairingPage(says: string): string {
  return framed(
    'Pair with the desk',
    'The desk',
    `<h1>Pair with the desk</h1>
<p>The terminal in which the desk was started shows a code of six figures.</p>
<form class="pair" method="post" action="/pair"><label for="code">Code</label> <input id="code" name="code" inputmode="numeric" autocomplete="one-time-code" pattern="[0-9 ]{6,7}" required> <button>Come in</button></form>
<p role="status">${escaped(says)}</p>`,
    '',
  );
}

function framed(title: string, car: string, main: string, script: string): string {
  return `<!doctype html>
<html lang="en-US"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escaped(title)}</title><link rel="icon" href="/favicon.svg"><link rel="stylesheet" href="/style/ashframe.css"><link rel="stylesheet" href="/style/desk.css">${script}</head>
<body class="desk"><a class="skip" href="#main">Skip to the page</a>
<header><div class="head"><p class="car"><a href="/">${escaped(car)} <span>the desk</span></a></p></div><div class="coach"></div></header>
<main id="main">${main}</main></body></html>`;
}

/** What stands in the entry, to be read. */
function reading({ shapes, lists, words, by, read }: Told): string {
  if (read === '') return '<p>Nothing is written of this day yet.</p>';
  const written = shapes.filter(({ list }) => (lists[list] ?? []).length > 0);
  return [
    ...(by === '' ? [] : [`<p>By ${escaped(by)}.</p>`]),
    ...written.map(
      ({ list, says }) =>
        `<h2>${escaped(says.replace(/[.:].*$/s, ''))}</h2><ul>${(lists[list] ?? [])
          .map(({ line }) => `<li>${escaped(typeof line === 'string' ? line : saidLine(line))}</li>`)
          .join('')}</ul>`,
    ),
    ...words
      .split(/\n{2,}/)
      .filter((said) => said !== '')
      .map((said) => `<p class="said">${escaped(said)}</p>`),
  ].join('\n');
}

const saidLine = (line: { [key: string]: string }) =>
  Object.entries(line)
    .map(([key, value]) => `${key} ${value}`)
    .join('; ');
