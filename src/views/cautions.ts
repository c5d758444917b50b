// The cautions that stand wherever dangerous work is shown or printed: short, each with its source.
import shared from '../../shared/cautions.json' with { type: 'json' };

export { hazardsOfLine, hazardsOfWork } from '../record/hazards.ts';

/** A caution as it is shown. None of them says that work is safe. */
export type Caution = { hazard: string; name: string; text: string; source: string };

/** The cautions for some hazards: each once, always in the order of shared/cautions.json. */
export function cautionsOf(hazards: readonly string[]): Caution[] {
  return shared.cautions
    .filter(({ hazard }) => hazards.includes(hazard))
    .map(({ hazard, name, text, source }) => ({ hazard, name, text, source }));
}

/** The sentence that closes every list of cautions. */
export const CAUTION_CLOSING = shared.closing;
