// What a line of each list begins with when it is said in words, and an example of each.

/**
 * `words` are told apart by what they are, and what is none of them goes to `rest`; `first` takes the first piece as
 * it stands; `second` is the key of one later piece that may leave its key out.
 */
export type Lead = {
  words?: readonly string[];
  rest?: string;
  first?: string;
  second?: string;
  example: string;
};

const thing = (example: string): Lead => ({ first: 'what', example });

/** By list, in the order of the schema. `finished` and `shop-only` hold names and sentences and aren’t here. */
export const LEADS: { readonly [list: string]: Lead } = {
  hours: {
    words: ['time', 'part', 'work', 'by'],
    second: 'note',
    example: 'cowl metal 2h 30m; left corner cut out',
  },
  bought: thing('Steel sheet, 18 ga; from millrace; part cowl; price 46.20; tax 3.23; bill 20790'),
  outside: thing('Recore the radiator; from selwick; part radiator; price 640'),
  ordered: thing('Top cloth; from marrow-lane; part top-cloth; expected 2025-12-01'),
  received: thing('Top cloth; from marrow-lane'),
  returned: thing('Water pump; from selwick; deposit 60'),
  measured: {
    words: ['kind', 'part', 'state'],
    example: 'level frame before; at L3; reading 1.4°; target 0°; within 0.5°',
  },
  pads: { words: ['state'], rest: 'mount', second: 'stack', example: 'L3 before; 1/8 in, 1/16 in' },
  marks: {
    first: 'mark',
    second: 'what',
    example: 'SILL L 4; Carriage bolts; count 4; kept bag 12; as refit',
  },
  sought: { first: 'what', second: 'outcome', example: 'Second hood iron; not found; asked three breakers' },
  finishes: { words: ['part'], rest: 'what', example: 'cowl lead; where left side, below the waist' },
  tested: { first: 'what', second: 'result', example: 'Fuel tank, filled; holds; until 2025-09-15' },
  photos: {
    first: 'file',
    second: 'caption',
    example: 'IMG_1028.jpg; Lower lip, bare; alt A ragged edge; part cowl',
  },
  left: { first: 'line', example: 'cowl/lead; hours 1, 3, 7' },
  fabric: { words: ['part', 'now'], second: 'note', example: 'floor-boards new-made; hatch copied' },
  agreed: { first: 'what', second: 'how', example: 'Recore the radiator; by telephone; amount 900' },
  paid: { first: 'amount', second: 'how', example: '8000; bank transfer' },
};
