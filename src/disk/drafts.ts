// Where what was said of a day is kept until it is written: in the record’s folder, where no reader of a record looks.

export const draftFolder = '.draft';

/** What was typed of an entry at the desk, as a path from the record’s folder. */
export const deskDraft = (entry: string) => `${draftFolder}/${entry}.desk.json`;
