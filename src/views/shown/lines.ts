// What a page of lines shows, and what it is compared by.
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import { once } from '../../record/once.ts';
import type { CarRecord } from '../../record/record.ts';
import type { Grouping, Row } from '../../rollup/cost-lines.ts';
import { fromLines } from '../line-text.ts';
import { type LineRow, type LinesPage, linesPage } from '../lines.ts';
import { page } from '../links.ts';

export type LinesShown = LinesPage & { path: string; from: string; code: string };

export function linesShown(by: Grouping, row: Row, record: CarRecord): LinesShown {
  return {
    ...linesPage(by, row, record),
    path: page.lines(by, row.key),
    from: fromLines(row.lines.length),
    code: record.currency.code,
  };
}

/** The same with a digest in place of each row: a line stands in a table of every grouping, and is summed up once. */
export function linesCompared({ groups, ...shown }: LinesShown): Record<string, unknown> {
  return { ...shown, groups: groups.map(({ rows, ...group }) => ({ ...group, rows: rows.map(digestOf) })) };
}

const digestOf = once((row: LineRow) => bytesToHex(sha256(utf8ToBytes(JSON.stringify(row)))));
