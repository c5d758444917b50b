// How a command ends: with its exit, or, where a disk refuses, with one sentence and 1.
import { diskFaultText } from '../disk/disk-fault.ts';

/** Runs a command and gives its exit. What is a fault of ours is thrown on. */
export async function ended(command: () => Promise<number>): Promise<number> {
  try {
    return await command();
  } catch (error) {
    const said = diskFaultText(error);
    if (said === undefined) throw error;
    console.error(said);
    return 1;
  }
}
