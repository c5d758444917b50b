// Finds lines whose words speak of work that can hurt, and that name no hazard.
import { hazardsInWords } from '../hazard-words.ts';
import { hazardsOfWork } from '../hazards.ts';
import type { Place } from '../place.ts';
import type { CarRecord } from '../record.ts';
import type { Check } from './check.ts';

export const hazardNotNamed: Check = {
  rule: 'hazard-not-named',
  severity: 'warning',
  why: 'A caution is shown only where the line, or its kind of work, carries the hazard.',
  run: (record) =>
    writtenWork(record).flatMap(({ does, work, hazards, place }) => {
      // An empty list is an answer too: somebody has looked, and nothing in the line can hurt.
      if (does === undefined || hazards !== undefined) return [];
      const carried = hazardsOfWork(work);
      const spoken = hazardsInWords(does).filter((hazard) => !carried.includes(hazard));
      if (spoken.length === 0) return [];
      return [
        {
          place: place(),
          reason: `\`${does}\` speaks of ${inWords(spoken)}, and the line names no hazard.`,
          mend: `Write \`hazards: [${spoken.join(', ')}]\` on the line, or \`hazards: []\` when it can’t hurt.`,
        },
      ];
    }),
};

type Written = { does?: string; work?: string; hazards?: readonly string[]; place: () => Place };

/** Every line of work that is planned or offered. */
function writtenWork({ parts, choices }: CarRecord): Written[] {
  return [
    ...parts.flatMap(({ planned = [], placeAt }) =>
      planned.map((line, i) => ({ ...line, does: line.do, place: () => placeAt(['planned', i, 'do']) })),
    ),
    ...choices.flatMap(({ options, placeAt }) =>
      options.flatMap(({ lines }, i) =>
        lines.map((line, j) => ({
          ...line,
          does: line.do,
          place: () => placeAt(['options', i, 'lines', j, 'do']),
        })),
      ),
    ),
  ];
}

/** `lead and hot work`. */
function inWords(hazards: readonly string[]): string {
  const names = hazards.map((hazard) => hazard.replaceAll('-', ' '));
  return names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
}
