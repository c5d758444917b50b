// Asks what the pictures of a day show: those that lie in its folder and have no words yet.
import { isKeys, type Keys } from '../../record/writing/edit.ts';
import { askLine, type Talk } from './ask-lines.ts';

export async function askPhotos(talk: Talk): Promise<void> {
  const { asker, suggested } = talk;
  const said = new Map(
    talk.lines('photos').flatMap((line, at) => (isKeys(line) ? [[line.file, at] as const] : [])),
  );
  const waiting = suggested.photos.filter(({ file }) => !said.has(file));
  if (waiting.length === 0) return;
  const count = waiting.length === 1 ? '1 picture' : `${waiting.length} pictures`;
  if (!(await asker.yes(`${count} of the day without words. Say what they show?`, true))) return;
  for (const photo of waiting) {
    const caption =
      photo.caption ??
      (await asker.text({
        message: `${photo.file}: what does it show, and why was it taken`,
        needed: false,
        check: () => undefined,
      }));
    if (caption === '') continue;
    const begun: Keys = { file: photo.file, caption, ...(photo.alt ? { alt: photo.alt } : {}) };
    const at = talk.lines('photos').length;
    await talk.keep('photos', at, begun);
    await askLine(talk, 'photos', at, begun);
  }
}
