// Reads the tag files of a bag as strictly as the standard asks (RFC 8493, 2.1 to 2.3); what isn't right is told
// with its file and line.
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { DECLARATION, decodedPath, pathFault } from './form.ts';
import { linesOf } from './info.ts';

/** What is wrong with a bag, in one file of it. */
export type Fault = {
  what: 'missing' | 'changed' | 'extra' | 'form';
  file: string;
  line?: number;
  says: string;
};

/** A line of a manifest that can be checked. */
export type Entry = { path: string; sum: string; line: number };

const BOM = '\ufeff';

/** Reads bagit.txt; gives the encoding of the other tag files, or nothing when it can't be known. */
export async function readDeclaration(folder: string): Promise<{ encoding: string; faults: Fault[] }> {
  const file = 'bagit.txt';
  const bytes = await readFile(join(folder, file)).catch(() => undefined);
  const form = (says: string): Fault => ({ what: 'form', file, says });
  if (!bytes)
    return { encoding: 'utf-8', faults: [{ what: 'missing', file, says: 'without it this is no bag' }] };
  const text = decoded(bytes, 'utf-8');
  if (text === undefined) return { encoding: 'utf-8', faults: [form('it isn’t UTF-8')] };
  if (text.startsWith(BOM)) return { encoding: 'utf-8', faults: [form('it begins with a byte-order mark')] };
  const [version, encoding, ...more] = linesOf(text);
  const named = /^Tag-File-Character-Encoding: (\S+)$/.exec(encoding ?? '')?.[1];
  const faults: Fault[] = [];
  if (version !== DECLARATION.split('\n')[0]) {
    const other = /^BagIt-Version: (\d+\.\d+)$/.exec(version ?? '')?.[1];
    faults.push({
      ...form(
        other
          ? `the bag is of BagIt ${other}, and 1.0 is what is checked here`
          : wanted('BagIt-Version: 1.0', version),
      ),
      line: 1,
    });
  }
  if (named === undefined)
    faults.push({ ...form(wanted('Tag-File-Character-Encoding: UTF-8', encoding)), line: 2 });
  else if (!isEncoding(named)) faults.push({ ...form(`\`${named}\` is no encoding known here`), line: 2 });
  if (more.length > 0) faults.push({ ...form('it has more than its two lines'), line: 3 });
  return { encoding: named !== undefined && isEncoding(named) ? named : 'utf-8', faults };
}

const wanted = (line: string, found: string | undefined) =>
  `expected \`${line}\`, found ${found === undefined ? 'nothing' : `\`${found}\``}`;

/** Reads the text of another tag file; nothing when there is none. */
export async function readTag(
  folder: string,
  file: string,
  encoding: string,
): Promise<{ text: string | undefined; faults: Fault[] }> {
  const bytes = await readFile(join(folder, file)).catch(() => undefined);
  const text = bytes && decoded(bytes, encoding);
  if (bytes && text === undefined) {
    return { text: '', faults: [{ what: 'form', file, says: `it isn’t ${encoding.toUpperCase()}` }] };
  }
  const marked = text?.startsWith(BOM) && /^utf-?8$/i.test(encoding);
  return {
    text: text?.startsWith(BOM) ? text.slice(1) : text,
    faults: marked ? [{ what: 'form', file, line: 1, says: 'it begins with a byte-order mark' }] : [],
  };
}

/** The lines of a manifest; `tags` when it lists tag files, which never begin with `data/`. */
export function readManifest(
  file: string,
  text: string,
  { digits, tags }: { digits: number; tags: boolean },
): { entries: Entry[]; faults: Fault[] } {
  const entries = new Map<string, Entry>();
  const faults: Fault[] = [];
  for (const [i, written] of linesOf(text).entries()) {
    const form = (says: string) => faults.push({ what: 'form', file, line: i + 1, says });
    const [, sum = '', after = ''] = /^([0-9a-f]+)[ \t]+(.+)$/i.exec(written) ?? [];
    const path = decodedPath(after);
    const fault = pathFault(path);
    if (sum.length !== digits || after === '')
      form(`\`${written}\` is not a checksum of ${digits} digits and a path`);
    else if (fault) form(`\`${path}\` isn’t allowed: ${fault}`);
    else if (path.startsWith('data/') === tags)
      form(`\`${path}\` doesn’t belong here: ${tags ? 'it is payload' : 'it lies outside data/'}`);
    else if (tags && /^tagmanifest-/.test(path)) form(`\`${path}\` may not be listed in a tag manifest`);
    else if (entries.has(path)) form(`\`${path}\` is listed twice, first in line ${entries.get(path)?.line}`);
    else entries.set(path, { path, sum: sum.toLowerCase(), line: i + 1 });
  }
  return { entries: [...entries.values()], faults };
}

function decoded(bytes: Uint8Array, encoding: string): string | undefined {
  try {
    return new TextDecoder(encoding, { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return undefined;
  }
}

function isEncoding(name: string): boolean {
  try {
    new TextDecoder(name);
    return true;
  } catch {
    return false;
  }
}
