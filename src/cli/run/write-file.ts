import { writeOutputFile } from '../../node/output/output-file.js';
import type { OutputFileOptions } from '../../node/output/output-file.js';
import type { Io } from './io.js';

/** Writes one finished file; Ctrl-C meanwhile puts everything back before the program ends. */
export async function writeFileGuarded(
  file: string,
  content: Uint8Array | string,
  options: Omit<OutputFileOptions, 'signal'>,
  io: Io,
): Promise<void> {
  io.guard?.(true);
  try {
    await writeOutputFile(file, content, { ...options, signal: io.signal });
  } finally {
    io.guard?.(false);
  }
}
