// Which words of a line speak of a hazard. The lines are ours; what they mean to a restorer is common practice.
import { describe, expect, test } from 'vitest';
import { hazardsInWords } from '../../src/record/hazard-words.ts';
import { HAZARD } from '../../src/record/words.ts';

describe('words that speak of a hazard', () => {
  test.each([
    ['Cut out the lower edge, weld in new, wire it', ['hot-work']],
    ['Take out the braze, planish', ['hot-work']],
    ['Free the rusted bolts with the torch', ['hot-work']],
    ['Unsolder core from tanks, look inside', ['hot-work']],
    ['Strip paint, scrape the old lead', ['lead']],
    ['Fill the seam with body solder', ['lead', 'hot-work']],
    ['Tin and lead what the hammer can’t reach', ['lead', 'hot-work']],
    ['Planish, then lead the low spots', ['lead']],
    ['Leading the seams below the deck', ['lead']],
    ['Sand the old paint off the doors', ['lead']],
    ['Free the mounts and lift the body off', ['lifting']],
    ['Set the painted body down and bolt it home', ['lifting']],
    ['Lower the engine between the rails', ['lifting']],
    ['Hoist it over the cart', ['lifting']],
    ['Take it out on the jib', ['forklift']],
    ['Move it by fork lift', ['forklift']],
    ['Drain the fuel, look into the lines', ['fuel']],
    ['Boil out the tank', ['fuel']],
    ['Weld the gas tank straps', ['hot-work', 'fuel']],
    ['Send out for blasting', ['silica']],
    ['Grit-blast both axles', ['silica']],
    ['Straighten, new rivets, paint', ['spray']],
    ['Prime and paint the bare frame black', ['spray']],
    ['Spray the inside of the cowl', ['spray']],
    ['New brake linings, drums skimmed', ['asbestos']],
    ['Scrape off the old head gasket', ['asbestos']],
    ['Plane the new ash rail to the line', ['wood-dust']],
    ['Fair the veneer, sand it', ['wood-dust']],
  ])('%s', (text, hazards) => {
    expect(hazardsInWords(text)).toEqual(hazards);
  });

  test('every hazard that may be written is spoken of by some words', () => {
    const all =
      'weld the old lead; lift the body by fork lift; fuel; blasting; spray; asbestos; saw the timber';
    expect(hazardsInWords(all)).toEqual([...HAZARD]);
  });
});

describe('words that only look like it', () => {
  test.each([
    'Lead the loom through the cowl',
    'Dress the leading edge of the hood',
    'Order early, lead time is six weeks',
    'New lead wire to the horn',
    'Look at the metal under the paint',
    'Put the painted car together',
    'Wipe the primer dust from the sill',
    'Brace both door openings',
    'Lift the carpet and look',
    'Set the window lift and the latch',
    'Raise the lower body line',
    'Set the gaps and the latch',
    'New rubber at the radiator top tank',
    'Bottom tank to the hose, new clips',
    'Calibrate the fuel gauge',
    'Prime the oil pump',
    'Sandwich the felt under the bracket',
    'Plane of the brackets read again',
    'New head lining, sewn and hung',
    'Fit new gaskets and seals',
    'Clean the saw cuts in the bronze bush',
  ])('%s', (text) => {
    expect(hazardsInWords(text)).toEqual([]);
  });
});
