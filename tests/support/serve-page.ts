import { readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import sirv from 'sirv';

/** The built page on an address of its own. */
export interface ServedPage {
  readonly address: string;
  /** The server goes away, and the page's open connections with it. */
  goOffline(): Promise<void>;
}

/** What a server may do besides. */
export interface ServeHow {
  /** Another name for the edition that the service worker keeps; its own when undefined. */
  readonly edition?: () => string | undefined;
  /** Told of every request: its path, and what it is for (Fetch Metadata: `script`, `worker`, `style` …). */
  readonly asked?: (path: string, dest: string) => void;
}

export async function serveBuiltPage({ edition, asked }: ServeHow = {}): Promise<ServedPage> {
  const folder = fileURLToPath(new URL('../../dist/page/', import.meta.url));
  const files = sirv(folder);
  const server = createServer((request, answer) => {
    asked?.(request.url ?? '', String(request.headers['sec-fetch-dest']));
    const named = request.url === '/service-worker.js' ? edition?.() : undefined;
    if (named === undefined) return void files(request, answer);
    const script = readFileSync(join(folder, 'service-worker.js'), 'utf8');
    answer.setHeader('Content-Type', 'text/javascript');
    answer.end(script.replace(/rondure-[0-9a-f]{16}/, named));
  });
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  return {
    address: `http://127.0.0.1:${(server.address() as AddressInfo).port}/`,
    async goOffline() {
      server.closeAllConnections();
      if (server.listening) await new Promise((done) => server.close(done));
    },
  };
}
