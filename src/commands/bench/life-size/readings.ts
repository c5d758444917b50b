// What is measured in a made-up record: every kind of reading in turn, and pads under the mounts now and then.
import { type Draw, oneOf } from './draw.ts';

/** Lines of `measured` for an entry that works on a part; about two entries in five have some. */
export function readingsOf(entry: number, part: string, draw: Draw): string[] {
  if (entry % 50 === 7) return [heights(part, draw), level(part, draw), level(part, draw)];
  if (draw(1, 5) > 2) return [];
  return Array.from({ length: draw(1, 2) }, () => oneOf(KINDS, draw)(part, draw));
}

/** Lines of `pads` for an entry, with the heights of which they were read. */
export function padsOf(entry: number, part: string, draw: Draw): string[] {
  if (entry % 50 !== 7) return [];
  const state = oneOf(STATES, draw);
  return MOUNTS.map(
    (mount) =>
      `  - { mount: ${mount}, stack: [${oneOf(['1/8 in', '1/8 in, 1/16 in', '1/8 in, 1/8 in'], draw)}], state: ${state}, part: ${part} }\n`,
  );
}

const MOUNTS = ['L1', 'L2', 'L3', 'L4', 'L5', 'R1', 'R2', 'R3', 'R4', 'R5'];
const STATES = ['before', 'trial', 'after'];
const off = (draw: Draw) => `${draw(-5, 5)}/64 in`.replace(/^0\/64/, '0');
const state = (draw: Draw) => oneOf(STATES, draw);

function heights(part: string, draw: Draw): string {
  const points = MOUNTS.map(
    (mount, i) => `{ mount: ${mount}, x: ${22 * (i % 5)} in, y: ${i < 5 ? 0 : 41} in, z: ${off(draw)} }`,
  );
  return `  - { kind: heights, part: ${part}, state: ${state(draw)}, of: over the stacks, points: [${points.join(', ')}], within: 1/32 in, plus-minus: 1/64 in }\n`;
}

function level(part: string, draw: Draw): string {
  return `  - { kind: level, part: ${part}, state: ${state(draw)}, at: L${draw(1, 5)}, reading: ${draw(-14, 14) / 10}°, target: 0°, within: 0.5°, over: 6 in, plus-minus: 0.05° }\n`;
}

const KINDS: readonly ((part: string, draw: Draw) => string)[] = [
  level,
  (part, draw) =>
    `  - { kind: thickness, part: ${part}, state: ${state(draw)}, of: above the lip, readings: [0.047 in, 0.0${draw(36, 48)} in, 0.044 in], target: 18 ga steel, within: 0.003 in, plus-minus: 0.001 in }\n`,
  (part, draw) =>
    `  - { kind: gaps, part: ${part}, state: ${state(draw)}, where: rear edge, readings: [${draw(3, 9)}/32 in, ${draw(3, 9)}/32 in, 5/32 in, ${draw(3, 9)}/32 in], length: 24 in, target: 5/32 in, within: 1/32 in, plus-minus: 1/64 in }\n`,
  (part, draw) =>
    `  - { kind: straight, part: ${part}, state: ${state(draw)}, of: outer edge, length: 57 in, offsets: [0 in, ${draw(1, 5)}/32 in, ${draw(1, 5)}/32 in, 1/32 in, 0 in], within: 1/16 in, note: string pulled from end to end }\n`,
  (part, draw) =>
    `  - { kind: timber, part: ${part}, state: ${state(draw)}, of: back end, species: white ash, width: 4 1/2 in, grain: tangential, moisture-from: ${draw(10, 14)}%, moisture-to: 9%, plus-minus: 1% }\n`,
  (part, draw) =>
    `  - { kind: diagonals, part: ${part}, state: ${state(draw)}, of: main bay, a: 88 in, b: 41 in, d1: 97 ${draw(1, 7)}/64 in, d2: 97 ${draw(1, 7)}/64 in, within: 1/8 in, plus-minus: 1/32 in }\n`,
  (part, draw) =>
    `  - { kind: length, part: ${part}, state: ${state(draw)}, of: drop at the latch, readings: [${draw(1, 11)}/16 in], target: 0 in, within: 1/16 in, plus-minus: 1/64 in }\n`,
];
