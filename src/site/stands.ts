// A page that would come out as it lies in the last site isn't drawn again. Pages that may stand lay all that they show
// before a component of `shown/`, which knows nothing else of the record but its frame; a build asks what that is first.
import {
  type Compared,
  comparedBy,
  type MayStand,
  type Shown,
  type ShownAt,
} from '../views/shown/compared.ts';
import { frame } from './record.ts';

/** Lets a page stand that shows what `shown` gives; `compared` takes apart what is shown elsewhere too. */
export function mayStand<Params, Props, What extends Shown>(
  shown: ShownAt<Params, Props, What>,
  compared: (shown: What) => Compared = (shown) => ({ shown }),
): MayStand<Params, Props, What> {
  return {
    shown,
    texts: async (what) => comparedBy(await frame(), compared(what)),
    at: async ({ params, props, locals }) =>
      // What a build has asked for already it hands over.
      'shown' in locals ? (locals.shown as What) : shown(params as Params, props as Props),
  };
}
