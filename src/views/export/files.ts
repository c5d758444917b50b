// The files of an export: a CSV for each table, and the Data Package descriptor that says what they hold.
import type { CarRecord } from '../../record/record.ts';
import type { Rollup } from '../../rollup/cost-lines.ts';
import { csvText } from '../csv.ts';
import { historyTables, totalsTable } from './history.ts';
import type { ExportTable } from './table.ts';
import { exportTables } from './tables.ts';

/** A file of an export; `rows` are those of a table. */
export type ExportFile = { file: string; text: string; rows?: number };

/** For the owner: hours, bills and statement lines. */
export function exportFiles(record: CarRecord): ExportFile[] {
  return filesOf(exportTables(record), {
    name: record.car.name,
    title: 'hours, bills and statements',
    description: `Amounts in ${record.currency.code}, times in minutes.`,
  });
}

/** For a later reader: hours, and what was bought; with `came` also what the work came to. */
export function historyFiles(record: CarRecord, came: Rollup | undefined): ExportFile[] {
  const { currency, car } = record;
  return filesOf([...historyTables(record), ...(came ? [totalsTable(came, currency)] : [])], {
    name: car.name,
    title: came ? 'hours, things bought, and totals' : 'hours, and things bought',
    description: `Times in minutes.${came ? ` Amounts in ${currency.code}.` : ' No amounts are in it.'}`,
  });
}

type About = { name: string; title: string; description: string };

/** Names and texts, the descriptor last: what it names is there by then. */
function filesOf(tables: readonly ExportTable[], about: About): ExportFile[] {
  return [
    ...tables.map((table) => ({
      file: pathOf(table),
      text: csvText(
        table.columns.map(({ name }) => name),
        table.rows,
      ),
      rows: table.rows.length,
    })),
    { file: 'datapackage.json', text: `${JSON.stringify(descriptor(tables, about), null, 2)}\n` },
  ];
}

/** By the Data Package and Tabular Data Resource profiles (specs.frictionlessdata.io). */
function descriptor(tables: readonly ExportTable[], { name, title, description }: About) {
  return {
    profile: 'tabular-data-package',
    name: slug(name),
    title: `${name}: ${title}`,
    description,
    resources: tables.map((table) => ({
      profile: 'tabular-data-resource',
      name: table.name,
      title: table.title,
      path: pathOf(table),
      format: 'csv',
      mediatype: 'text/csv',
      encoding: 'utf-8',
      dialect: { delimiter: ',', lineTerminator: '\r\n', quoteChar: '"', doubleQuote: true, header: true },
      schema: {
        fields: table.columns.map(({ name, type, says }) => ({ name, type, description: says })),
        missingValues: [''],
      },
    })),
  };
}

const pathOf = ({ name }: ExportTable) => `${name}.csv`;

/** Letters without accents, digits and hyphens: a name that the profile allows. */
function slug(text: string): string {
  const plain = text
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '');
  return plain || 'record';
}
