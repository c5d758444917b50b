// The files of an export: a CSV for each table, and the Data Package descriptor that says what they hold.
import type { CarRecord } from '../../record/record.ts';
import { csvText } from '../csv.ts';
import type { ExportTable } from './table.ts';
import { exportTables } from './tables.ts';

/** Names and texts, the descriptor last: what it names is there by then. */
export function exportFiles(record: CarRecord): { file: string; text: string; rows?: number }[] {
  const tables = exportTables(record);
  return [
    ...tables.map((table) => ({
      file: pathOf(table),
      text: csvText(
        table.columns.map(({ name }) => name),
        table.rows,
      ),
      rows: table.rows.length,
    })),
    { file: 'datapackage.json', text: `${JSON.stringify(descriptor(tables, record), null, 2)}\n` },
  ];
}

/** By the Data Package and Tabular Data Resource profiles (specs.frictionlessdata.io). */
function descriptor(tables: readonly ExportTable[], { car, currency }: CarRecord) {
  return {
    profile: 'tabular-data-package',
    name: slug(car.name),
    title: `${car.name}: hours, bills and statements`,
    description: `Amounts in ${currency.code}, times in minutes.`,
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
