// Pages are compiled apart from the command that builds them, with modules of their own. What the command has opened
// it hands them here, so that nothing is read twice.
import type { Made } from '../photos/make.ts';
import type { ChoiceDraws } from '../rollup/ahead/choice-draws.ts';
import type { DrawnBefore } from '../rollup/ahead/drawn-before.ts';
import type { FinishDraws } from '../rollup/ahead/finish-draws.ts';
import type { ChartTold } from '../views/chart-told.ts';
import type { OpenedFolder } from './open-folder.ts';

/** What is to be drawn: of every choice, of the forecasts that pages show, and charts. */
export type DrawsAhead = {
  choices: readonly ChoiceDraws[];
  finishes: readonly FinishDraws[];
  charts: readonly ChartTold[];
};

/** A folder that was opened, with its web pictures made, and what was drawn before. */
export type Handed = {
  opened: Omit<OpenedFolder, 'known'>;
  made: Made;
  drawn?: DrawnBefore;
  /** Is told what is to be drawn, as soon as that is known; resolves when it is, unless it is left to who asks for it. */
  ahead?: (draws: DrawsAhead) => Promise<void> | undefined;
};

const shared = globalThis as { ashframeHanded?: Handed };

/** Hands the pages what they are made from; the next one takes its place. With nothing they open the record themselves. */
export function handToPages(what: Handed | undefined): void {
  if (what) shared.ashframeHanded = what;
  else delete shared.ashframeHanded;
}

/** What was handed over; nothing where the pages open the record themselves. */
export function handedToPages(): Handed | undefined {
  return shared.ashframeHanded;
}
