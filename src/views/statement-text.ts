// A statement as `npm run statement` prints it: what the page says, in the order of the page.
import { plainTable, WIDTH, wrapped } from './plain-text.ts';
import type { StatementPage } from './statement.ts';

export function statementText(told: StatementPage): string {
  const { title, car, period, issued, shop, owner, lead, summary, tables, fine } = told;
  const head = `${title}: ${car}`;
  const sections = [
    `${head}\n${'='.repeat(head.length)}`,
    words(
      [`From ${shop}${owner ? ` to ${owner}` : ''}.`, `${period}${issued ? `, issued ${issued}` : ''}.`].join(
        ' ',
      ),
    ),
    words(lead),
    plainTable(summary),
    ...tables.map(plainTable),
    words(fine),
  ];
  return `${sections.join('\n\n')}\n`;
}

const words = (text: string): string => wrapped(text, WIDTH).join('\n');
