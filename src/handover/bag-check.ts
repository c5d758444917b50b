// Checks a bag (BagIt 1.0, RFC 8493): names every file that is missing, changed or extra, and every fault of form.
import { stat } from 'node:fs/promises';
import { join } from 'node:path';
import { checkFetch, checkInfo } from './bag/check-info.ts';
import { asOnDisk, notesOn } from './bag/check-names.ts';
import { isKnownAlgorithm, sumsOfFile } from './bag/digests.ts';
import { MANIFEST } from './bag/form.ts';
import { type Entry, type Fault, readDeclaration, readManifest, readTag } from './bag/read-tags.ts';
import { type Found, filesBelow } from './bag/walk.ts';

/** What was found: `faults` is empty when the bag is whole; `notes` are no faults, but a keeper should know them. */
export type Checked = {
  files: number;
  octets: number;
  algorithms: string[];
  faults: Fault[];
  notes: string[];
};

type Manifest = { file: string; algorithm: string; tags: boolean; entries: Entry[] };

/** Checks the bag in a folder. `step` is called once for each file that was read. */
export async function checkBag(folder: string, step: (files: number) => void = () => {}): Promise<Checked> {
  const there = await filesBelow(folder);
  const files = new Map(there.map((file) => [file.path, file]));
  const payload = there.filter(({ path }) => path.startsWith('data/'));
  const { encoding, faults } = await readDeclaration(folder);
  const data = await stat(join(folder, 'data')).catch(() => undefined);
  if (!data?.isDirectory()) faults.push({ what: 'missing', file: 'data', says: 'a bag has this folder' });
  const read: Manifest[] = [];
  for (const { path } of there) {
    const [, tag, algorithm = ''] = MANIFEST.exec(path) ?? [];
    if (algorithm === '') continue;
    if (!isKnownAlgorithm(algorithm)) {
      faults.push({ what: 'form', file: path, says: `\`${algorithm}\` is no checksum known here` });
      continue;
    }
    const { text = '', faults: inFile } = await readTag(folder, path, encoding);
    const about = { digits: DIGITS[algorithm] ?? 0, tags: tag !== undefined };
    const { entries, faults: inLines } = readManifest(path, text, about);
    read.push({ file: path, algorithm, tags: about.tags, entries });
    faults.push(...inFile, ...inLines);
  }
  const manifests = asOnDisk(read, there);
  faults.push(
    ...listing(manifests, payload),
    ...(await sums(folder, manifests, files, step)),
    ...(await checkInfo(folder, encoding, payload, sha256Of(read))),
    ...(await checkFetch(folder, encoding, listedIn(manifests))),
  );
  return {
    files: payload.length,
    octets: payload.reduce((sum, { octets }) => sum + octets, 0),
    algorithms: [...new Set(manifests.map(({ algorithm }) => algorithm))].sort(),
    faults: inOrder(faults),
    notes: notesOn(manifests, there),
  };
}

/** Hex digits of each checksum. */
const DIGITS: Record<string, number> = { md5: 32, sha1: 40, sha224: 56, sha256: 64, sha384: 96, sha512: 128 };

/** The lines of manifest-sha256.txt, as they are written in it. */
function sha256Of(manifests: readonly Manifest[]): Entry[] {
  return manifests.find(({ file }) => file === 'manifest-sha256.txt')?.entries ?? [];
}

/** All payload that a manifest lists. */
function listedIn(manifests: readonly Manifest[]): Set<string> {
  return new Set(manifests.flatMap(({ tags, entries }) => (tags ? [] : entries.map(({ path }) => path))));
}

/** Every payload file stands in every payload manifest, and every payload manifest in every tag manifest. */
function listing(manifests: readonly Manifest[], payload: readonly Found[]): Fault[] {
  const own = manifests.filter(({ tags }) => !tags);
  if (own.length === 0)
    return [{ what: 'missing', file: 'manifest-sha512.txt', says: 'no payload manifest is there' }];
  const all = listedIn(manifests);
  const faults: Fault[] = payload
    .filter(({ path }) => !all.has(path))
    .map(({ path }) => ({ what: 'extra', file: path, says: 'no manifest lists it' }));
  for (const { file, entries } of own) {
    const listed = new Set(entries.map(({ path }) => path));
    for (const path of all)
      if (!listed.has(path))
        faults.push({ what: 'form', file, says: `it doesn’t list \`${path}\`, another does` });
  }
  for (const { file, entries } of manifests.filter(({ tags }) => tags)) {
    const listed = new Set(entries.map(({ path }) => path));
    for (const manifest of own)
      if (!listed.has(manifest.file))
        faults.push({ what: 'form', file, says: `it doesn’t list ${manifest.file}` });
  }
  return faults;
}

/** Every listed file is there and has the sums that were written of it; each is read once. */
async function sums(
  folder: string,
  manifests: readonly Manifest[],
  files: ReadonlyMap<string, Found>,
  step: (files: number) => void,
): Promise<Fault[]> {
  const wanted = Map.groupBy(
    manifests.flatMap(({ algorithm, entries }) => entries.map(({ path, sum }) => ({ algorithm, path, sum }))),
    ({ path }) => path,
  );
  const faults: Fault[] = [];
  for (const [path, each] of wanted) {
    const file = files.get(path);
    if (!file) faults.push({ what: 'missing', file: path, says: 'a manifest lists it' });
    else if (file.link) faults.push({ what: 'form', file: path, says: 'it is a link, not a file' });
    else {
      const algorithms = [...new Set(each.map(({ algorithm }) => algorithm))];
      const found = await sumsOfFile(join(folder, path), algorithms).catch(() => undefined);
      const wrong = each.filter(({ algorithm, sum }) => found?.sums[algorithm] !== sum);
      if (!found) faults.push({ what: 'changed', file: path, says: 'it can’t be read' });
      else if (wrong.length > 0) {
        const which = wrong.map(({ algorithm }) => algorithm).join(' and ');
        faults.push({
          what: 'changed',
          file: path,
          says: `its ${which} ${wrong.length === 1 ? 'isn’t' : 'aren’t'} what was written down`,
        });
      }
    }
    step(wanted.size);
  }
  return faults;
}

const ORDER = { form: 0, missing: 1, changed: 2, extra: 3 };

function inOrder(faults: Fault[]): Fault[] {
  return faults.sort(
    (a, b) =>
      ORDER[a.what] - ORDER[b.what] ||
      (a.file < b.file ? -1 : a.file > b.file ? 1 : (a.line ?? 0) - (b.line ?? 0)),
  );
}
