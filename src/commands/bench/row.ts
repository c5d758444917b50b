// One row of the table: what was timed, and the floor or peer that was measured in the same run.

/** Seconds, or kilobytes of a page. */
export type Unit = 's' | 'kB';

/** `took` and `floor` in one unit; `megabytes` is the most memory that the processes of the row held. */
export type Row = {
  id: string;
  what: string;
  took: number;
  against: string;
  floor: number;
  unit?: Unit;
  goal?: Goal;
  megabytes?: number;
};

/** The most that the ratio, the seconds and the memory may come to. */
type Goal = { ratio?: number; seconds?: number; megabytes?: number };

export function ratioOf({ took, floor }: Row): number {
  return took / floor;
}

/** What of a goal isn't reached; empty when all of it is. */
export function missed(row: Row): string[] {
  const { goal = {}, took, megabytes = 0 } = row;
  return [
    ...(goal.ratio !== undefined && ratioOf(row) > goal.ratio ? ['ratio'] : []),
    ...(goal.seconds !== undefined && took > goal.seconds ? ['time'] : []),
    ...(goal.megabytes !== undefined && megabytes > goal.megabytes ? ['memory'] : []),
  ];
}
