import { RondureError } from '../core/errors.js';
import { en } from '../words/index.js';
import { exitCodes } from './run/exit-codes.js';
import { errorJson, run, wantsJson } from './program.js';

/** Signals that ask the program to stop, and what a shell would say when they ended it at once. */
const stopCodes = { SIGINT: exitCodes.interrupted, SIGTERM: 143, SIGHUP: 129 } as const;

/** Runs the program for a shell: real streams, Ctrl-C, and the exit code. */
export async function runFromShell(argv: readonly string[]): Promise<void> {
  const abort = new AbortController();
  let stoppedBy: keyof typeof stopCodes | undefined;
  const stop = (signal: NodeJS.Signals) => {
    stoppedBy ??= signal as keyof typeof stopCodes;
    abort.abort(new RondureError('interrupted', undefined));
  };
  for (const stream of [process.stdout, process.stderr]) {
    stream.on('error', (error: NodeJS.ErrnoException) => {
      // A reader that closes the pipe early (`| head`) is no error of ours.
      if (error.code === 'EPIPE') process.exit(process.exitCode ?? exitCodes.done);
      if (stream === process.stderr) process.exit(exitCodes.output);
      const detail = error.code ?? error.message;
      const message = en.cli.notPrinted({ detail });
      const asJson = wantsJson(argv.slice(2));
      process.stderr.write(
        asJson ? errorJson('not-printed', message, { detail }) : `${en.cli.error} ${message}\n`,
      );
      process.exit(exitCodes.output);
    });
  }
  const code = await run(argv.slice(2), en, {
    out: (text) => void process.stdout.write(text),
    err: (text) => void process.stderr.write(text),
    progress: process.stderr,
    signal: abort.signal,
    guard: (on) => {
      for (const signal of Object.keys(stopCodes) as NodeJS.Signals[]) {
        if (on) process.on(signal, stop);
        else process.off(signal, stop);
      }
    },
  });
  process.exitCode = code === exitCodes.interrupted && stoppedBy ? stopCodes[stoppedBy] : code;
}
