// The words after a command, read one way for all of them.
import { type ParseArgsConfig, parseArgs } from 'node:util';

type Options = NonNullable<ParseArgsConfig['options']>;

/**
 * The options and folders that were named, or nothing when the words aren't understood: then what was wrong and
 * how the command is used has been printed, and it ends with 2. `check` throws with a sentence of its own.
 */
export function asked<O extends Options>(
  use: string,
  options: O,
  check: (folders: string[]) => void = noFolder,
) {
  try {
    const read = parseArgs({ options, allowPositionals: true });
    check(read.positionals);
    return read;
  } catch (error) {
    console.error(`${(error as Error).message.split('. ')[0]}.\n${use}`);
    return undefined;
  }
}

function noFolder(folders: string[]): void {
  if (folders.length > 0) throw new Error(`Unexpected \`${folders[0]}\``);
}

/** For a command that works on one record: the folder may be named. */
export function oneFolder(folders: string[]): void {
  if (folders.length > 1) throw new Error('one folder at most');
}

/** A port as it was written, or 4321; nothing when it is none. */
export function portOf(written: string | undefined): number | undefined {
  const port = written === undefined ? 4321 : Number(written);
  return Number.isInteger(port) && port >= 1 && port <= 65535 ? port : undefined;
}
