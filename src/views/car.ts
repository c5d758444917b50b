// The front page: what the car is, what stands done and in hand, the cost so far, what waits, the newest days.
import { moneyText } from '../figures/money-text.ts';
import type { CarRecord, Part } from '../record/record.ts';
import type { Rollup } from '../rollup/cost-lines.ts';
import { namesOf } from './names.ts';

/** A part's state from its planned lines: all finished, some begun, or none. */
export type PartState = 'done' | 'in hand' | 'waiting' | 'nothing planned';

export function partState(part: Part, rollup: Rollup): PartState {
  const lines = (part.planned ?? []).map(({ line }) => rollup.planned[`${part.id}/${line}`]);
  if (lines.length === 0) return 'nothing planned';
  if (lines.every((line) => line?.finished)) return 'done';
  return lines.some((line) => line?.begun || line?.finished) ? 'in hand' : 'waiting';
}

/** Parts on the drawing by their place, with the state of all parts that share it. */
export function placesOnDrawing(
  record: CarRecord,
  rollup: Rollup,
): { at: string; state: PartState; parts: Part[] }[] {
  const places = new Map<string, Part[]>();
  for (const part of record.parts) {
    if (part.at === undefined) continue;
    places.set(part.at, [...(places.get(part.at) ?? []), part]);
  }
  return [...places].map(([at, parts]) => {
    const states = parts
      .map((part) => partState(part, rollup))
      .filter((state) => state !== 'nothing planned');
    const state: PartState =
      states.length === 0
        ? 'nothing planned'
        : states.every((each) => each === 'done')
          ? 'done'
          : states.every((each) => each === 'waiting')
            ? 'waiting'
            : 'in hand';
    return { at, state, parts };
  });
}

/** `Drophead coupe of 1934, body No. 218 by Tarrowby. Chassis 14/1187.` */
export function whatItIs({ car }: CarRecord): string {
  const body = car.numbers?.body ? `, body ${car.numbers.body}` : '';
  const by = car['bodied-by'] ? ` by ${car['bodied-by']}` : '';
  const chassis = car.numbers?.chassis ? ` Chassis ${car.numbers.chassis}.` : '';
  return `${car.style ? `${car.style}, ` : 'Built '}${car.built}${body}${by}.${chassis}`;
}

/** Spent and agreed as one sentence. */
export function costSentence({ currency }: CarRecord, { total, agreed }: Rollup): string {
  const of = agreed > 0 ? ` of the ${moneyText(agreed, currency)} agreed` : '';
  return `${moneyText(total.charged, currency)} is spent${of}.`;
}

/** What the owner has paid; nothing before that. */
export function paidSentence({ currency }: CarRecord, { paid }: Rollup): string {
  return paid > 0 ? `${moneyText(paid, currency)} has been paid.` : '';
}

/** What waits: open orders and open choices, each with what it waits for and until when. */
export function waiting(record: CarRecord, rollup: Rollup) {
  const names = namesOf(record);
  return [
    ...record.choices
      .filter(({ decided, withdrawn }) => !decided && !withdrawn)
      .map((choice) => ({
        what: choice.part.map(names.part).join(', '),
        waits: 'the owner’s word',
        choice: choice.id,
        question: choice.question,
        by: choice['needed-by'],
      })),
    ...rollup.openOrders.map((order) => ({
      what: names.part(order.part),
      waits: `${order.what}, from ${names.vendor(order.vendor)}`,
      choice: undefined,
      question: undefined,
      by: order.expected,
    })),
  ];
}
