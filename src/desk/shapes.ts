// The fields of the page, read off the schema: what may be written, in its words and its order.
import { sheets } from '../record/schema/sheets.ts';
import { bare, said } from '../record/schema-at.ts';
import { keyOrder, type Shape, within } from '../record/writing/key-order.ts';
import { refersTo } from '../record/writing/line-problems.ts';
import type { DeskField, DeskList } from './browser/told.ts';

/** All lists of an entry. */
export function shapes(): DeskList[] {
  const lists = Object.keys(bare(sheets.entry).shape ?? {}).filter((key) => key !== 'by' && key !== 'place');
  return lists.map((list) => {
    const shape = within(sheets.entry, list);
    const item = within(shape, 0);
    const kinds = kindsOf(item);
    const says = said(shape).description ?? '';
    if (kinds.length === 0) return { list, says, fields: { '': fieldsOf(list, item, '') } };
    return {
      list,
      says,
      kinds,
      fields: Object.fromEntries(kinds.map((kind) => [kind, fieldsOf(list, item, kind)])),
    };
  });
}

function kindsOf(item: Shape): string[] {
  const options = (item && bare(item).options) ?? [];
  return options.flatMap((option) => said(bare(option).shape?.kind).examples ?? []);
}

function fieldsOf(list: string, item: Shape, kind: string): DeskField[] {
  const line = kind === '' ? {} : { kind };
  const keys = [...new Set(keyOrder(item, line))].filter((key) => key !== 'place' && key !== 'kind');
  return keys.map((key) => {
    const field = within(item, key, line);
    const { description = '', examples: [example = ''] = [] } = said(field);
    const refers = refersTo(list, key, line);
    const { entries } = (field ? bare(field) : {}) as { entries?: Record<string, string> };
    const words = entries && Object.values(entries).map(String);
    const offers = refers ?? words;
    return {
      key,
      says: description.replace(/\.$/, ''),
      example,
      needed: field?.def.type !== 'optional',
      ...(offers ? { offers } : {}),
      as: key === 'time' ? 'time' : /^[$\d]/.test(example) && /^[\d.,]+$/.test(example) ? 'figure' : 'text',
    };
  });
}
