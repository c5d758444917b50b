// Checks the tag files of a bag that aren't manifests: bag-info.txt and fetch.txt (RFC 8493, 2.2.2 and 2.2.3).
import { COVER_SUM, coverSum } from './cover-sum.ts';
import { decodedPath, pathFault } from './form.ts';
import { infoOf, linesOf, readInfo } from './info.ts';
import { type Fault, readTag } from './read-tags.ts';
import type { Found } from './walk.ts';

/**
 * bag-info.txt has its form, its Payload-Oxum is the octets and the count of the payload, and a sum for the cover of a
 * book is that of what `listed` says, the lines of manifest-sha256.txt.
 */
export async function checkInfo(
  folder: string,
  encoding: string,
  payload: readonly Found[],
  listed: readonly { path: string; sum: string }[],
): Promise<Fault[]> {
  const file = 'bag-info.txt';
  const { text, faults } = await readTag(folder, file, encoding);
  if (text === undefined) return faults;
  const { info, faults: inLines } = readInfo(text);
  const form = (says: string): Fault => ({ what: 'form', file, says });
  faults.push(...inLines.map(({ line, says }) => ({ ...form(says), line })));
  const onCover = infoOf(info, COVER_SUM);
  const sum = coverSum(listed.map((line) => ({ path: line.path, sha256: line.sum })));
  if (onCover !== undefined && onCover !== sum)
    faults.push(form(`${COVER_SUM} says ${onCover}, and the files listed come to ${sum}`));
  const oxum = infoOf(info, 'Payload-Oxum');
  if (oxum === undefined) return faults;
  const there = `${payload.reduce((sum, { octets }) => sum + octets, 0)}.${payload.length}`;
  if (info.filter(([label]) => label.toLowerCase() === 'payload-oxum').length > 1)
    faults.push(form('Payload-Oxum stands there more than once'));
  else if (!/^\d+\.\d+$/.test(oxum))
    faults.push(form(`Payload-Oxum \`${oxum}\` is not octets, a dot and a count`));
  else if (oxum !== there) faults.push(form(`Payload-Oxum says ${oxum}, and ${there} is there`));
  return faults;
}

/** A line of fetch.txt names payload that all manifests list. That it isn't there is told as missing by them. */
export async function checkFetch(
  folder: string,
  encoding: string,
  listed: ReadonlySet<string>,
): Promise<Fault[]> {
  const file = 'fetch.txt';
  const { text, faults } = await readTag(folder, file, encoding);
  for (const [i, written] of linesOf(text ?? '').entries()) {
    const form = (says: string) => faults.push({ what: 'form', file, line: i + 1, says });
    const path = decodedPath(/^[a-z][a-z0-9+.-]*:\S+[ \t]+(?:\d+|-)[ \t]+(.+)$/i.exec(written)?.[1] ?? '');
    if (path === '') form(`\`${written}\` is not an address, a length and a path`);
    else if (pathFault(path)) form(`\`${path}\` isn’t allowed: ${pathFault(path)}`);
    else if (!listed.has(path)) form(`\`${path}\` is in no manifest`);
  }
  return faults;
}
