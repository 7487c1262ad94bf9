import { RondureError } from '../core/errors.js';
import { en } from '../words/index.js';
import { exitCodes } from './exit-codes.js';
import { run } from './program.js';

/** Runs the program for a shell: real streams, Ctrl-C, and the exit code. */
export async function runFromShell(argv: readonly string[]): Promise<void> {
  const abort = new AbortController();
  let presses = 0;
  const stop = () => {
    presses += 1;
    abort.abort(new RondureError('interrupted', undefined));
    if (presses > 1) process.exit(exitCodes.interrupted);
  };
  process.on('SIGINT', stop);
  process.on('SIGTERM', stop);
  // A reader that closes the pipe early (`| head`) is no error of ours.
  for (const stream of [process.stdout, process.stderr]) {
    stream.on('error', (error: NodeJS.ErrnoException) => {
      if (error.code === 'EPIPE') process.exit(exitCodes.done);
      throw error;
    });
  }
  process.exitCode = await run(argv.slice(2), en, {
    out: (text) => void process.stdout.write(text),
    err: (text) => void process.stderr.write(text),
    progress: process.stderr,
    signal: abort.signal,
  });
}
