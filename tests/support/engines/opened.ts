import { afterAll, beforeAll } from 'vitest';
import { serveBuiltPage } from '../serve-page.js';
import type { ServedPage } from '../serve-page.js';
import { startEngine } from './index.js';
import type { Engine, EngineName } from './index.js';
import { makerAt } from './maker.js';
import type { Maker } from './maker.js';

/** The built page in an engine, for all tests of a suite. */
export interface Opened {
  readonly served: ServedPage;
  readonly engine: Engine;
  readonly maker: Maker;
}

/** Opens the built page before the tests of a suite and closes it after them; gives what is open. */
export function openedIn(name: EngineName): () => Opened {
  let served: ServedPage | undefined;
  let engine: Engine | undefined;
  let maker: Maker;
  beforeAll(async () => {
    served = await serveBuiltPage();
    engine = await startEngine(name);
    maker = await makerAt(await engine.newPage(1280, 800), served.address);
    await maker.settled();
  });
  afterAll(async () => {
    await engine?.close();
    await served?.goOffline();
  });
  return () => ({ served: served!, engine: engine!, maker });
}
