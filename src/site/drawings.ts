// The two drawings of the car, read once, with parts marked and linked.
import plan from './drawings/plan.svg?raw';
import side from './drawings/side.svg?raw';

/** How a part stands, or what it is made of; or the one the page is about. */
export type Mark = 'done' | 'hand' | 'this' | 'mended' | 'renewed' | 'unsaid';

/** A drawing's inner markup; `marks` and `links` go by a part's place on the drawing. */
export function drawing(
  view: 'side' | 'plan',
  marks: Record<string, Mark>,
  links: Record<string, string> = {},
): string {
  const whole = view === 'side' ? side : plan;
  const inner = whole
    .slice(whole.indexOf('</style>') + '</style>'.length, whole.lastIndexOf('</svg>'))
    .replaceAll(/ id="[^"]*"/g, '');
  const marked = inner.replaceAll(
    /<(g class="part|path class="hidden)(")? data-at="([^"]+)"/g,
    (tag, _open, _end, at) => {
      const mark = marks[at as string];
      return mark ? tag.replace('class="part', `class="part ${mark}`) : tag;
    },
  );
  const patterns = Object.values(marks).some((mark) => mark in FABRIC)
    ? Object.values(FABRIC).join('')
    : HATCH;
  return `<defs>${patterns}</defs>${Object.keys(links).reduce((svg, at) => linked(svg, at, links[at] as string), marked)}`;
}

/** The view box of each drawing, one unit to a tenth of an inch. */
export const viewBox = { side: '60 30 1720 690', plan: '60 30 1720 740' };

/** Puts a group of the drawing inside a link. */
function linked(svg: string, at: string, to: string): string {
  const start = new RegExp(`<g class="part[^"]*" data-at="${at}"`).exec(svg)?.index;
  if (start === undefined) return svg;
  let depth = 0;
  for (const tag of svg.slice(start).matchAll(/<g[ >]|<\/g>/g)) {
    depth += tag[0] === '</g>' ? -1 : 1;
    if (depth > 0) continue;
    const end = start + tag.index + '</g>'.length;
    return `${svg.slice(0, start)}<a href="${to}">${svg.slice(start, end)}</a>${svg.slice(end)}`;
  }
  return svg;
}

const HATCH = pattern('hatch', 13, '#7f9887', 'M0 0V13', 6);

/** Three grounds that are told apart in black and white too: lines one way, lines crossed, dots. */
const FABRIC: Partial<Record<Mark, string>> = {
  mended: pattern('mended', 16, '#1f4434', 'M0 0V16', 2.6),
  renewed: pattern('renewed', 13, '#1f4434', 'M0 0V13M0 0H13', 3.4),
  unsaid: pattern('unsaid', 18, '#1d1c18', 'M8 9h2', 3),
};

/** A ground of lines or dots, `size` units of the drawing from one to the next. */
function pattern(id: string, size: number, ink: string, lines: string, width: number): string {
  return `<pattern id="${id}" width="${size}" height="${size}" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><rect width="${size}" height="${size}" fill="#f8f4ea"/><path d="${lines}" stroke="${ink}" stroke-width="${width}"/></pattern>`;
}
