import { run } from '../../src/cli/program.js';
import { en } from '../../src/words/index.js';

/** Runs one command line in this process. */
export async function inProcess(...argv: string[]) {
  let out = '';
  let err = '';
  const io = {
    out: (text: string) => void (out += text),
    err: (text: string) => void (err += text),
    progress: undefined,
    signal: new AbortController().signal,
  };
  const code = await run(argv, en, io);
  return { code, out, err };
}
