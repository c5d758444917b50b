// Finds mounts not named by side and number.
import type { Check } from './check.ts';

export const mountName: Check = {
  rule: 'mount-name',
  severity: 'error',
  why: 'The body goes back on the stacks it came off, so every mount needs one name through the whole record.',
  run: ({ entries }) =>
    entries.flatMap(({ pads = [], measured = [], placeAt }) => [
      ...pads.flatMap(({ mount }, i) => wrong(mount, () => placeAt(['pads', i, 'mount']))),
      ...measured.flatMap((reading, i) =>
        reading.kind === 'heights'
          ? (reading.points ?? []).flatMap(({ mount }, j) =>
              wrong(mount, () => placeAt(['measured', i, 'points', j, 'mount'])),
            )
          : [],
      ),
    ]),
};

function wrong(
  mount: string | undefined,
  place: () => ReturnType<Parameters<Check['run']>[0]['car']['placeAt']>,
) {
  if (mount === undefined || /^[LR][1-9]\d?$/.test(mount)) return [];
  const turned = /^([lr])\s*-?\s*([1-9]\d?)$/i.exec(mount) ?? /^([1-9]\d?)\s*-?\s*([lr])$/i.exec(mount);
  const [side, number] = [
    turned?.slice(1).find((one) => /[lr]/i.test(one)),
    turned?.slice(1).find((one) => /\d/.test(one)),
  ];
  return [
    {
      place: place(),
      reason: `\`${mount}\` is no name of a mount.`,
      mend: side
        ? `Did you mean \`${side.toUpperCase()}${number}\`?`
        : 'Write the side and the number from the front, such as `L1` or `R3`.',
    },
  ];
}
