// Which web pictures come from a camera file, and what they are called. Names follow from the camera file's bytes
// and from how pictures are made, so that the same picture is never made twice, and caches made apart can be merged.
import { createHash } from 'node:crypto';

/** The web sizes: widest and highest, in pixels, and the quality of the picture from 1 to 100. */
export const SIZES = {
  large: { width: 1600, height: 3200, quality: 77 },
  small: { width: 480, height: 960, quality: 74 },
} as const;

/** Costs a third of the encoder's usual effort, for files 5% larger. */
export const EFFORT = 2;

/** Changes when pictures are made in another way, so that all are made again. */
const RECIPE = JSON.stringify({ way: 1, ...SIZES, EFFORT });

/** The three files kept of one camera file. The facts are written last: where they are, the pictures are whole. */
export type Names = { large: string; small: string; facts: string };

/** The names of what is made from a camera file with this content. */
export function namesOf(content: string): Names {
  const name = createHash('sha256').update(content).update(RECIPE).digest('hex').slice(0, 24);
  return { large: `${name}-large.webp`, small: `${name}-small.webp`, facts: `${name}.json` };
}

/** The folder of a site that pictures lie in, and nothing else. */
export const PICTURES = 'pictures';

/** What a web picture is called, so that nothing else is served by mistake. */
const WEB_PICTURE = /^[0-9a-f]{24}-(?:large|small)\.webp$/;

/** The name of the web picture that a path within a site leads to. */
export function pictureAt(path: string): string | undefined {
  const [folder, name = '', ...below] = path.split('/');
  return folder === PICTURES && below.length === 0 && WEB_PICTURE.test(name) ? name : undefined;
}

/** The hash that a camera file is known by, whatever it is named. */
export function contentOf(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}
