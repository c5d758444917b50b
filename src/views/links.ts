// Where each page lies, and links between pages: relative, with file names, so that the site opens from a
// folder by double click as well as from a web host.
import type { Grouping } from '../rollup/cost-lines.ts';

export type { Grouping };

export const page = {
  front: 'index.html',
  days: 'days.html',
  month: (month: string) => `days/${month}.html`,
  day: (entry: string) => `day/${entry}.html`,
  parts: 'parts.html',
  part: (part: string) => `part/${part}.html`,
  choices: 'choices.html',
  choice: (choice: string) => `choice/${choice}.html`,
  costs: 'costs.html',
  lines: (by: Grouping, key: string | undefined) => `lines/${by}/${lineKey(key)}.html`,
  problems: 'problems.html',
};

/** A row's key as a file name: lines that belong to none stand under `none`. */
export function lineKey(key: string | undefined): string {
  return key === undefined ? 'none' : key.toLowerCase().replace(/[^a-z0-9-]+/g, '-');
}

/** The link from one page to another, or to a file beside the pages. */
export function href(from: string, to: string): string {
  return '../'.repeat(from.split('/').length - 1) + to;
}
