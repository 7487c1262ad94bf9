import { existsSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { fileURLToPath } from 'node:url';
import type { Command } from 'commander';
import sirv from 'sirv';
import { RondureError } from '../../core/errors.js';
import { hasCode } from '../../node/output/output-errors.js';
import type { Words } from '../../words/index.js';
import { shown, whole } from '../options/option-makers.js';
import type { Io } from '../run/io.js';

/** The port that is asked for when none is named; when it is taken, any free one. */
const usualPort = 4571;

/** `page`: the worktable, served to a browser on this machine until Ctrl-C. Opens nothing by itself. */
export function addPageCommand(program: Command, words: Words, io: Io): void {
  const command = program
    .command('page')
    .description(words.page.about)
    .addHelpText('before', words.page.examples);
  command.addOption(
    shown(whole('--port <NUMBER>', words.page.port, 1, 65_535), words.page.portDefault(usualPort)),
  );
  command.action(async () => {
    const { port } = command.opts<{ port?: number }>();
    if (!existsSync(inPackage('dist/page/'))) throw new RondureError('page-not-built', undefined);
    await servePage(port, io, words);
  });
}

/** From the top, so that it is the same when run from the sources. */
const inPackage = (path: string) => fileURLToPath(new URL(`../../../${path}`, import.meta.url));

/** A font of the page, by the name that the page's build gave it. */
const builtFont = /^\/assets\/(\w+-\w+)-[\w-]{8}(\.ttf)$/;

/** Serves plain files on the loopback address alone, until the signal says stop. */
async function servePage(port: number | undefined, io: Io, words: Words) {
  const files = sirv(inPackage('dist/page/'), { etag: true });
  // The package holds them once, for the booklet too: its page comes without.
  const fonts = sirv(inPackage('fonts/'), { etag: true });
  const server = createServer((request, answer) => {
    answer.setHeader('X-Content-Type-Options', 'nosniff');
    answer.setHeader('Cross-Origin-Opener-Policy', 'same-origin');
    answer.setHeader('Content-Security-Policy', "frame-ancestors 'none'");
    files(request, answer, () => {
      const font = (request.url ?? '').replace(builtFont, '/$1$2');
      const missing = () => void answer.writeHead(404).end();
      if (font === request.url) return missing();
      request.url = font;
      fonts(request, answer, missing);
    });
  });
  const listen = (wanted: number) =>
    new Promise<void>((done, fail) => {
      server.once('error', fail);
      server.listen(wanted, '127.0.0.1', () => {
        server.off('error', fail);
        done();
      });
    });
  try {
    await listen(port ?? usualPort);
  } catch (cause) {
    if (port !== undefined || !hasCode(cause, 'EADDRINUSE')) {
      throw new RondureError('port-taken', { port: port ?? usualPort }, { cause });
    }
    await listen(0);
  }
  io.guard?.(true);
  const stopped = new Promise<void>((done) => {
    if (io.signal.aborted) done();
    io.signal.addEventListener('abort', () => done(), { once: true });
  });
  io.out(words.page.served(`http://127.0.0.1:${(server.address() as AddressInfo).port}/`));
  await stopped;
  server.closeAllConnections();
  await new Promise<void>((done) => server.close(() => done()));
}
