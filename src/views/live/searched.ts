// How the record is searched: the same where the index is written and in the browser that reads it.
import type { Options } from 'minisearch';

/** One thing that can be found. `to` is its page, `text` all its words, `words` those shown under its title. */
export type Searched = {
  id: number;
  kind: 'Day' | 'Part' | 'Choice' | 'Page' | 'Photograph';
  to: string;
  title: string;
  words: string;
  text: string;
};

export const SEARCH: Options<Searched> = {
  fields: ['title', 'text'],
  storeFields: ['kind', 'to', 'title', 'words'],
  searchOptions: {
    // Every word must be there, as it is, begun, or with a letter or so amiss.
    combineWith: 'AND',
    prefix: true,
    fuzzy: (term) => (term.length > 4 ? 0.2 : false),
    boost: { title: 2 },
  },
};
