// Mounts and pads: the stacks as found, as changed, as they are, and what to change after the last fit-up.
import { workedText } from '../../figures/length-text.ts';
import type { Units } from '../../figures/lengths.ts';
import type { PadsPlan } from '../../measure/pads/pads.ts';
import type { CarRecord } from '../../record/record.ts';
import { type FitUp, fitUpsOf } from '../../rollup/measured/pads.ts';
import { type MountStacks, samePads, stacksOf } from '../../rollup/measured/stacks.ts';
import { datedText } from '../dated.ts';
import { page } from '../links.ts';
import { figureText } from './figure-text.ts';
import { changeText, padsText, stackText } from './pad-text.ts';
import { padsPicture } from './pads-picture.ts';
import { fewestText, type PadsSaid, padsSaid, stockText } from './pads-said.ts';
import type { Picture } from './pictures.ts';

/** A mount as the page and the sheet show it; `change` is empty where nothing changes. */
export type MountRow = {
  mount: string;
  found: string;
  changed: string;
  now: string;
  height: string;
  fit: string;
  change: string;
  after: string;
};

/** `asOf` is the reading that the answer rests on; `fitUps` are all of them, oldest first. */
export type PadsShown = PadsSaid & {
  stock: string;
  asOf?: { text: string; to: string };
  rows: MountRow[];
  /** The same rows, side by side. */
  sides: { side: string; rows: MountRow[] }[];
  picture?: Picture;
  fitUps: { day: string; to: string; state: string; furthest: string; fewest: string }[];
};

/** Nothing where no stack was ever written down. */
export function padsShown(record: CarRecord): PadsShown | undefined {
  const stacks = stacksOf(record);
  if (stacks.length === 0) return undefined;
  const { units } = record;
  const fitUps = fitUpsOf(record);
  const last = fitUps.at(-1);
  const still = last !== undefined && standsStill(last, stacks);
  const plan = still && last.proposal.ok ? last.proposal.value.plan : undefined;
  const picture = padsPicture(plan, record);
  const rows = stacks.map((stack) => rowOf(stack, last, plan, units));
  return {
    ...padsSaid(last, still, units),
    stock: stockText(record),
    ...(last && {
      asOf: {
        text: `${datedText(last.measured.day)}, ${last.measured.state}`,
        to: page.day(last.measured.entry),
      },
    }),
    rows,
    sides: [...Map.groupBy(rows, ({ mount }) => (mount.startsWith('L') ? 'Left' : 'Right'))].map(
      ([side, own]) => ({ side, rows: own }),
    ),
    ...(picture && { picture }),
    fitUps: fitUps.map((fitUp) => {
      const { day, entry, state, answer } = fitUp.measured;
      return {
        day: datedText(day),
        to: page.day(entry),
        state,
        furthest: answer.ok ? figureText(answer.value.furthest, units) : '',
        fewest: fewestText(fitUp),
      };
    }),
  };
}

/** Whether the stacks are still those that the heights were read over. */
function standsStill({ mounts }: FitUp, stacks: readonly MountStacks[]): boolean {
  return mounts.every(({ mount, stack }) => {
    const now = stacks.find((each) => each.mount === mount)?.now;
    return !stack || !now || samePads(stack.stack, now.stack);
  });
}

function rowOf(
  { mount, found, changed, now }: MountStacks,
  last: FitUp | undefined,
  plan: PadsPlan | undefined,
  units: Units,
): MountRow {
  const own = plan?.mounts.find(({ id }) => id === mount);
  const read = last?.mounts.find((each) => each.mount === mount);
  return {
    mount,
    found: found ? stackText(found.stack, units) : 'not written down',
    changed: changed.map(({ stack, day }) => `${datedText(day)}: ${stackText(stack, units)}`).join('; '),
    now: stackText(now.stack, units),
    height: read ? workedText(read.height, units) : '',
    fit: own ? padsText(own.after, units) : stackText(now.stack, units),
    change: own ? changeText(own, units) : '',
    after: own ? workedText(own.height, units) : '',
  };
}
