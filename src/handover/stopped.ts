// What stops a hand-over for a reason that a person can mend: its message is the whole sentence.

export class Stopped extends Error {}
