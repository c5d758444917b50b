// Names that stand in file names, in references and in the addresses of pages.

/** Windows keeps these for devices, whatever ending follows (Microsoft, “Naming Files, Paths, and Namespaces”). */
const KEPT = /^(?:con|prn|aux|nul|com\d|lpt\d)$/i;

/** Letters of a name of a file: its page and its pictures are named by it, with endings of their own. */
export const LONGEST_NAME = 100;

export const ID = /^[a-z0-9]+(?:-[a-z0-9]+)*$/;

/** True of a name that a record carried to a machine with Windows couldn't have. */
export function keptByWindows(name: string): boolean {
  return KEPT.test(name.split('.')[0] ?? '');
}
