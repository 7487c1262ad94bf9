import { run } from '../../src/cli/program.js';
import { en } from '../../src/words/index.js';

/** Runs one command line in this process; a command that serves is stopped once it serves. */
export async function inProcess(...argv: string[]) {
  const stop = new AbortController();
  let out = '';
  let err = '';
  const io = {
    out: (text: string) => {
      out += text;
      if (text.includes('http://127.0.0.1:')) stop.abort();
    },
    err: (text: string) => void (err += text),
    progress: undefined,
    signal: stop.signal,
  };
  const code = await run(argv, en, io);
  return { code, out, err };
}
