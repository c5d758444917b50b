// The words of the trade that speak of work that can hurt. Careful rather than complete: a word that has another
// meaning in the shop counts only where the words around it leave no doubt.

/** The hazards that the words of a line speak of, in the order of shared/cautions.json. */
export function hazardsInWords(text: string): string[] {
  return Object.entries(SPOKEN)
    .filter(([, patterns]) => patterns.some((pattern) => pattern.test(text)))
    .map(([hazard]) => hazard);
}

/** Begins a part of the sentence: `Prime and paint it` tells what to do, `under the paint` doesn't. */
const DO = String.raw`(?:^|[,;:.]\s*|\b(?:and|then|or)\s+)`;
const HEAVY = '(?:body|shell|tub|engine|gearbox|transmission|chassis|frame|car|axle)';
/** Up to the next comma or stop. */
const CLAUSE = '[^,;:.]*';

const SPOKEN: Readonly<Record<string, readonly RegExp[]>> = {
  lead: [
    /\b(?:body|lead)[ -]solder/i,
    /\blead[ -](?:load|fill|wip)/i,
    new RegExp(
      String.raw`${DO}lead (?:in |up )?(?:the )?(?:\w+ )?(?:seams?|joints?|corners?|dents?|patch(?:es)?|low spots?)\b`,
      'i',
    ),
    /\bleading\b(?=\s+(?:the|in|up|work)\b)/i,
    // The metal, not the way: a lead wire, lead time, to lead the loom through.
    /\b(?:the|old|in|of|and|with|more|fresh|melt|scrape|file|tin|sweat) lead\b(?![ -](?:time|wire|cable|screw|in\b|out\b|to\b|through|acid))/i,
    new RegExp(
      String.raw`${DO}(?:strip|sand|burn|scrape)\b(?:\s+(?:off|down|back))?(?:\s+(?:the|all|old|its))*\s+paint\b`,
      'i',
    ),
  ],
  'hot-work': [
    /\b(?:re-?|un)?weld(?:s|ed|ing)?\b/i,
    /\b(?:re-?|un)?braz(?:e|es|ed|ing)\b/i,
    /\b(?:re-?|un)?solder(?:s|ed|ing)?\b/i,
    /\b(?:blow)?torch(?:es)?\b/i,
    /\boxy-?acetylene\b/i,
    new RegExp(`${DO}tin and lead\\b`, 'i'),
  ],
  lifting: [
    /\bhoist(?:s|ed|ing)?\b/i,
    /\bsling(?:s|ing)?\b/i,
    new RegExp(
      String.raw`\blift(?:s|ing)?\b${CLAUSE}\b${HEAVY}\b(?!\s+(?:line|color|paint|number|plate)\b)`,
      'i',
    ),
    new RegExp(String.raw`\bset(?:ting)?\b${CLAUSE}\b${HEAVY}\b${CLAUSE}\bdown\b`, 'i'),
    new RegExp(String.raw`\bset(?:ting)? down the\b${CLAUSE}\b${HEAVY}\b`, 'i'),
    new RegExp(String.raw`${DO}lower the (?:\w+ )?${HEAVY}\b`, 'i'),
  ],
  forklift: [/\bfork[ -]?lift\b/i, /\bfork truck\b/i, /\bjib\b/i],
  fuel: [
    /\b(?:fuel|gasoline|petrol)\b(?![ -](?:gau?ge|gage|sender|cap|door)\b)/i,
    /\b(?:gas|saddle) tanks?\b/i,
    /(?<!\b(?:header|radiator|top|bottom|upper|lower|water|washer|vacuum|plating|dip|air)[ -])\btank\b/i,
  ],
  silica: [/\b(?:sand|grit|bead|soda|media|shot)?[ -]?blast(?:s|ing)?\b(?! of\b)/i],
  spray: [
    /\bspray(?:s|ed|ing)?\b(?! (?:bar|bottle|can)\b)/i,
    new RegExp(String.raw`${DO}(?:re)?(?:paint|lacquer)\b(?! (?:is|was|has|off|from|and\b.*\boff)\b)`, 'i'),
    new RegExp(String.raw`${DO}prime\b(?! (?:the )?(?:fuel |oil |water )?(?:pump|carburetor|siphon)\b)`, 'i'),
    /\b(?:re)?painting\b/i,
  ],
  asbestos: [
    /\basbestos\b/i,
    /\b(?:brake|clutch)(?: shoe| plate| disc)? (?:linings?|facings?)\b/i,
    /\b(?:re)?lin(?:e|ed|ing) (?:the |all |four )*(?:brakes?|brake shoes|clutch)\b/i,
    /\bold (?:\w+ )?gaskets?\b/i,
  ],
  'wood-dust': [
    /\b(?:sand|saw|plane|rasp)(?:s|ed|n|ing)?\b(?=.*\b(?:wood|timber|ash|oak|beech|plywood|veneer|boards?)\b)/i,
    /\b(?:wood|timber|ash|oak|beech|plywood|veneer)\b.*\b(?:sand|saw|plane|rasp)(?:s|ed|n|ing)?\b/i,
  ],
};
