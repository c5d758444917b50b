// The last table is kept, so that the next run can say what moved.
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { Row } from './row.ts';

/** `under` says when and with which versions. */
export type Last = { under: string; rows: Row[] };

const FILE = join('.cache', 'bench', 'last.json');

/** The last table; nothing when there is none that can be read. */
export async function readLast(): Promise<Last | undefined> {
  try {
    return JSON.parse(await readFile(FILE, 'utf8')) as Last;
  } catch {
    return undefined;
  }
}

/** Keeps a table. Rows that weren't run this time stay as they were. */
export async function keepLast(under: string, rows: readonly Row[]): Promise<void> {
  const fresh = new Map(rows.map((row) => [row.id, row]));
  const before = (await readLast())?.rows ?? [];
  const kept = before.map((row) => fresh.get(row.id) ?? row);
  const known = new Set(kept.map(({ id }) => id));
  const all = [...kept, ...rows.filter(({ id }) => !known.has(id))];
  await mkdir(dirname(FILE), { recursive: true });
  await writeFile(FILE, `${JSON.stringify({ under, rows: all }, null, 2)}\n`);
}
