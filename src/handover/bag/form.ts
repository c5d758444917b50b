// The form of a bag (RFC 8493, BagIt 1.0): what its files are called and how a line of a manifest is written.

/** The checksums that a bag made here carries. */
export const ALGORITHMS = ['sha256', 'sha512'] as const;
export type Algorithm = (typeof ALGORITHMS)[number];

/** A payload file as the manifests list it; `path` begins with `data/`. */
export type Listed = { path: string; octets: number } & { [algorithm in Algorithm]: string };

/** bagit.txt: exactly these two lines (RFC 8493, 2.1.1). */
export const DECLARATION = 'BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n';

/** `manifest-sha256.txt` and `tagmanifest-sha256.txt`, by their algorithm. */
export const MANIFEST = /^(tag)?manifest-([a-z0-9]+)\.txt$/;

/** The lines of a manifest, in order of their paths, in the form that `sha256sum -c` reads. */
export function manifestText(files: readonly { path: string; sum: string }[]): string {
  return [...files]
    .sort((a, b) => (a.path < b.path ? -1 : 1))
    .map(({ path, sum }) => `${sum}  ${encodedPath(path)}\n`)
    .join('');
}

/** CR, LF and % in a path, and only those, are percent-encoded (RFC 8493, 2.1.3). */
export function encodedPath(path: string): string {
  return path.replace(/[%\r\n]/g, (letter) => ENCODED[letter] ?? letter);
}

export function decodedPath(written: string): string {
  return written.replace(/%(0a|0d|25)/gi, (_, code: string) =>
    String.fromCharCode(Number.parseInt(code, 16)),
  );
}

const ENCODED: Record<string, string> = { '%': '%25', '\r': '%0D', '\n': '%0A' };

/** Why a path may not stand in a bag: it could lead out of it, on some machine or other. */
export function pathFault(path: string): string | undefined {
  if (/^(?:[/\\~]|[a-z]:|%[a-z]+%)/i.test(path)) return 'it doesn’t begin inside the bag';
  const steps = path.split(/[/\\]/);
  if (steps.includes('..')) return 'it leads out of the folder with `..`';
  return steps.some((step) => step === '' || step === '.') ? 'it has an empty step' : undefined;
}

/** Two names of one form are the same file on disks that tell neither capitals nor ways of writing accents apart. */
export function formOf(path: string): string {
  return path.normalize('NFC').toLowerCase();
}
