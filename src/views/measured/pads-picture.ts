// The mounts from above with their stacks, and what goes in or comes out of each.
import { millimetres } from '../../figures/lengths.ts';
import type { PadsPlan } from '../../measure/pads/pads.ts';
import type { CarRecord } from '../../record/record.ts';
import { mountsOf } from '../../rollup/measured/mounts.ts';
import { type MountStacks, stacksOf } from '../../rollup/measured/stacks.ts';
import { type MountShown, mountsDrawn } from '../drawn/mounts.ts';
import { DESK, PHONE } from '../drawn/shapes.ts';
import { changeText, stackText } from './pad-text.ts';
import type { Picture } from './pictures.ts';

/** Without a plan the stacks as they are. */
export function padsPicture(plan: PadsPlan | undefined, record: CarRecord): Picture | undefined {
  const { units } = record;
  const stacks = stacksOf(record);
  const shown = stacks.map((stack) => shownOf(stack, plan, record));
  const mounts = mountsOf(record);
  const desk = mountsDrawn(shown, mounts, DESK);
  const phone = mountsDrawn(shown.map(shortly), mounts, PHONE);
  if (!desk || !phone) return undefined;
  return {
    desk,
    phone,
    title: 'The mounts from above, by number from the front, each with its stack of pads',
    description: shown
      .map(({ mount, says }, i) => {
        const now = stackText(stacks[i]?.now.stack ?? [], units);
        return `${mount}: ${now}${says ? `; ${says}` : ''}.`;
      })
      .join(' '),
    larger: `Stacks are seen from the side and drawn ${desk.factor} times too thick,`,
    caption: `their width not to scale. Mounts by number from the front, front to the left.${plan ? ' Tinted: to put in. Dashed: to take out.' : ''}`,
  };
}

function shownOf({ mount, now }: MountStacks, plan: PadsPlan | undefined, { units }: CarRecord): MountShown {
  const own = plan?.mounts.find(({ id }) => id === mount);
  if (!own) {
    const stays = now.stack.map(({ length }) => millimetres(length));
    return { mount, stays, putIn: [], takeOut: [], says: '' };
  }
  const { after, putIn, takeOut } = own;
  const stays = after.slice(0, after.length - putIn.length);
  return { mount, stays, putIn, takeOut, says: changeText(own, units) };
}

/** On a phone there is room beside a mount for the pads alone. */
const shortly = (shown: MountShown): MountShown => ({
  ...shown,
  says: shown.says.replace(/ (goes|go) in/, ' in').replace(/ (comes|come) out/, ' out'),
});
