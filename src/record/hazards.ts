// Which hazards a line carries: those it names, and those of its kind of work.
import shared from '../../shared/cautions.json' with { type: 'json' };

/** The hazards of a line of work, in the order of shared/cautions.json. */
export function hazardsOfLine(line: {
  work?: string | undefined;
  hazards?: readonly string[] | undefined;
}): string[] {
  const named = [...(line.hazards ?? []), ...hazardsOfWork(line.work)];
  return shared.cautions.flatMap(({ hazard }) => (named.includes(hazard) ? [hazard] : []));
}

/** What a kind of work carries by itself: timber makes dust, and paint is sprayed unless somebody says otherwise. */
export function hazardsOfWork(work: string | undefined): string[] {
  return shared.cautions.flatMap(({ hazard, work: kinds }) =>
    work !== undefined && (kinds as string[]).includes(work) ? [hazard] : [],
  );
}
