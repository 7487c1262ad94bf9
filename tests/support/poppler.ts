import { execFileSync } from 'node:child_process';

/** Runs a tool of poppler-utils or qpdf, which share no code with the writer. */
export function tool(name: string, args: readonly string[]): Buffer {
  try {
    return execFileSync(name, args, { maxBuffer: 1e9, stdio: ['ignore', 'pipe', 'pipe'] });
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'ENOENT') throw error;
    throw new Error(`${name} is missing: install the Debian packages poppler-utils and qpdf.`, {
      cause: error,
    });
  }
}
