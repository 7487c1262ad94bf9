import { writeFolder } from '../../node/output/output-folder.js';
import type { Io } from './io.js';

/** Writes a finished set of files; Ctrl-C meanwhile puts everything back before the program ends. */
export async function writeSet(
  folder: string,
  files: Parameters<typeof writeFolder>[1],
  options: Omit<Parameters<typeof writeFolder>[2], 'signal'>,
  io: Io,
): Promise<void> {
  io.guard?.(true);
  try {
    await writeFolder(folder, files, { ...options, signal: io.signal });
  } finally {
    io.guard?.(false);
  }
}
