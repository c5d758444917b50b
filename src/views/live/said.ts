// Words with estimates among them: an estimate is set in italics wherever it stands.

/** A sentence in pieces. What is estimated is told apart, so that no page sets it like a figure that was paid. */
export type Said = readonly (string | { estimate: string })[];

export const estimate = (text: string) => ({ estimate: text });

/** The sentence as bare text. */
export function plain(said: Said): string {
  return said.map((piece) => (typeof piece === 'string' ? piece : piece.estimate)).join('');
}
