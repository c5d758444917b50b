// What each planned line has taken so far.
import { type CarRecord, lineName } from '../record/record.ts';
import type { CostLine, Rollup } from './cost-lines.ts';

/** Every planned line of the parts, and any other that the log names. */
export function plannedSoFar(lines: readonly CostLine[], record: CarRecord): Rollup['planned'] {
  const planned: Rollup['planned'] = {};
  const of = (name: string) => {
    planned[name] ??= { minutes: 0, charged: 0, begun: false, lines: [] };
    return planned[name];
  };
  for (const part of record.parts) for (const { line } of part.planned ?? []) of(`${part.id}/${line}`);
  for (const line of lines) {
    if (line.line === undefined) continue;
    const so = of(line.line);
    so.minutes += line.minutes ?? 0;
    so.charged += line.charged;
    so.begun = true;
    so.lines.push(line);
  }
  for (const entry of record.entries) {
    for (const name of entry.finished ?? []) {
      Object.assign(of(lineName(name, undefined)), { finished: entry.day, begun: true });
    }
    for (const { line, hours, spend } of entry.left ?? []) {
      const so = of(lineName(line, undefined));
      so.left = {
        ...so.left,
        ...(hours !== undefined && { hours: { on: entry.day, range: hours } }),
        ...(spend !== undefined && { spend: { on: entry.day, range: spend } }),
      };
    }
  }
  return planned;
}
