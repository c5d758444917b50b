// What the desk and its page tell each other: plain values, all fields as text, as a person types them.

/** Something that can be chosen. `part` is whose it is, `work` what is likely done on it, `at` its place on the drawing. */
export type Offer = { value: string; label: string; part?: string; work?: string; at?: string };
/** What a field may name in the record. */
export type Refers = 'part' | 'vendor' | 'person' | 'work' | 'line' | 'choice' | 'photo';
export type DeskField = {
  key: string;
  says: string;
  example: string;
  needed: boolean;
  /** A name of the record, or one of these words. */
  offers?: Refers | string[];
  as: 'time' | 'figure' | 'text';
};
/** A list of an entry: the fields of its lines, by kind where there are kinds; lines of plain text have none. */
export type DeskList = {
  list: string;
  says: string;
  kinds?: string[];
  fields: { [kind: string]: DeskField[] };
};

/** A line as it is shown and sent: of plain text, or by key. `at` is its place in the file that was read. */
export type DeskLine = { at?: number; line: string | { [key: string]: string } };
/** An open choice, with the sign of the file it stands in. */
export type OpenChoice = { id: string; question: string; options: Offer[]; read: string };

/** An entry as the page gets it. `read` is the sign of the text it was read from, empty where there is no file yet. */
export type Told = {
  entry: string;
  file: string;
  read: string;
  by: string;
  lists: { [list: string]: DeskLine[] };
  words: string;
  shapes: DeskList[];
  offers: { [refers in Refers]?: Offer[] };
  choices: OpenChoice[];
  /** Pictures of the day that no entry names yet. */
  waiting: string[];
  day: string;
  /** What was typed of it before and isn’t written. */
  draft?: KeptDraft;
};

/** An entry as the page sends it back. */
export type Form = {
  entry: string;
  read: string;
  by: string;
  lists: { [list: string]: DeskLine[] };
  words: string;
  decided?: { choice: string; read: string; option: string; by: string; reason: string };
};

/** When it was kept, the form, what it would have done, and what somebody did to the file since. */
export type KeptDraft = { said: string; form: Form; mine: Difference; theirs?: Difference };

export type Difference = { how: 'same' | 'added' | 'gone'; text: string }[];
/** A file that somebody else changed: what they did, and what would have been written. */
export type Conflict = { file: string; theirs: Difference; mine: Difference };
/** What an entry would come to. `lines` are sentences by list and number of the line, `others` stand for the whole. */
export type Looked = {
  lines: { list: string; n: number; says: string[] }[];
  others: string[];
  /** How much of it stands in the way of writing. */
  errors: number;
  sums: string[];
  files: { file: string; difference: Difference }[];
  /** The sign of all that would be written: only what was shown is written. */
  sign: string;
  conflict?: Conflict;
  /** The time at which what was typed was kept. */
  kept?: string;
};
