// The catalogue of problems in the writer's guide: what is said of each mistake, and why it matters.
import type { Check } from '../record/checks/check.ts';

/** The catalogue as Markdown: mistakes that stop a file from being read first, then the checks in their order. */
export function problemCatalogue(
  said: readonly { name: string; says: string }[],
  checks: readonly Pick<Check, 'rule' | 'severity' | 'why'>[],
): string {
  const rules = new Set(checks.map(({ rule }) => rule));
  const says = new Map(said.map(({ name, says }) => [name, says]));
  const reading = said.filter(({ name }) => !rules.has(name));
  return [
    '### Mistakes in one file',
    ...reading.map(({ name, says }) => `**${words(name)}**\n\n${shown(says)}`),
    '### Files that don’t agree',
    ...checks.map(
      ({ rule, severity, why }) => `**${rule}** (${severity}). ${why}\n\n${shown(says.get(rule) ?? '')}`,
    ),
  ].join('\n\n');
}

/** What stands in a guide between `<!-- name -->` and `<!-- /name -->`, without the lines around it. */
export function between(guide: string, name: string): string {
  const [, rest = ''] = guide.split(`<!-- ${name} -->\n\n`);
  return rest.split(`\n\n<!-- /${name} -->`)[0] ?? '';
}

/** The guide with something else between the two marks. */
export function withBetween(guide: string, name: string, text: string): string {
  const [before = '', rest] = guide.split(`<!-- ${name} -->`);
  const after = rest?.split(`<!-- /${name} -->`)[1];
  if (after === undefined)
    throw new Error(`The guide has no \`<!-- ${name} -->\` and \`<!-- /${name} -->\`.`);
  return `${before}<!-- ${name} -->\n\n${text}\n\n<!-- /${name} -->${after}`;
}

const shown = (says: string) => `\`\`\`text\n${says.trimEnd()}\n\`\`\``;

function words(name: string): string {
  const text = name.replaceAll('-', ' ');
  return text.charAt(0).toUpperCase() + text.slice(1).replace('html', 'HTML');
}
