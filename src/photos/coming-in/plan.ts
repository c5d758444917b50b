// Decides what becomes of each picture that comes in: new or known, of which day, under which name.
import type { Day } from '../../figures/days.ts';
import type { Verdict } from '../verdict.ts';

/** A picture found on a phone or card. `path` is relative to the folder looked through. */
export type Incoming = {
  path: string;
  /** The hash of its bytes. */
  content: string;
  /** The camera's own clock, where it wrote one. */
  taken?: string;
  /** The day the file was last changed, by the clock on the wall. */
  changed: Day;
  verdict?: Verdict;
};

/** What the record holds already. Paths are relative to its folder. */
export type Present = {
  /** Pictures by the hash of their bytes; of those only that may be among the incoming. */
  byContent: ReadonlyMap<string, string>;
  /** All names in a folder of photos/, as the disk has them. */
  namesIn: (folder: string) => readonly string[];
  opened: Day;
  today: Day;
};

/** A picture to be copied; `asked` is the name it came with, when another has that already. */
export type Copy = { from: string; to: string; content: string; day: Day; undated: boolean; asked?: string };

export type Plan = {
  copies: Copy[];
  known: { from: string; path: string }[];
  /** Pictures dated before the record opens, or after today. */
  outside: { from: string; day: Day }[];
  refused: { from: string; verdict: Verdict }[];
};

/** The plan, in order of time. With `day` every picture is of that day, whatever the camera says. */
export function planIncoming(incoming: readonly Incoming[], present: Present, day?: Day): Plan {
  const plan: Plan = { copies: [], known: [], outside: [], refused: [] };
  const byContent = new Map(present.byContent);
  const taken = new Map<string, Set<string>>();
  for (const { path, content, verdict, ...about } of inOrder(incoming)) {
    const known = byContent.get(content);
    if (known !== undefined) {
      plan.known.push({ from: path, path: known });
      continue;
    }
    if (verdict) {
      plan.refused.push({ from: path, verdict });
      continue;
    }
    const on = day ?? about.taken?.slice(0, 10) ?? about.changed;
    if (on < present.opened || on > present.today) {
      plan.outside.push({ from: path, day: on });
      continue;
    }
    const folder = `photos/${on}`;
    const names = taken.get(folder) ?? new Set(present.namesIn(folder).map(alike));
    taken.set(folder, names);
    const asked = nameOf(path);
    const name = freeName(asked, names);
    names.add(alike(name));
    const to = `${folder}/${name}`;
    byContent.set(content, to);
    const undated = day === undefined && about.taken === undefined;
    plan.copies.push({ from: path, to, content, day: on, undated, ...(name === asked ? {} : { asked }) });
  }
  return plan;
}

/** A name that no other has, also on a disk that doesn't tell capitals from small letters. */
function freeName(asked: string, names: ReadonlySet<string>): string {
  const dot = asked.lastIndexOf('.');
  let name = asked;
  for (let n = 2; names.has(alike(name)); n++) name = `${asked.slice(0, dot)}-${n}${asked.slice(dot)}`;
  return name;
}

const alike = (name: string) => name.normalize('NFC').toLowerCase();
const nameOf = (path: string) => path.slice(path.lastIndexOf('/') + 1).normalize('NFC');

function inOrder(incoming: readonly Incoming[]): Incoming[] {
  const key = ({ taken, changed, path }: Incoming) => `${taken ?? changed} ${path}`;
  return incoming.toSorted((a, b) => (key(a) < key(b) ? -1 : 1));
}
