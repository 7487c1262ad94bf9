import type { Bead } from '../../core/beads/bead.js';
import type { CellPatch } from '../../core/blank/cell-patch.js';
import type { Pattern } from '../../core/pattern/pattern.js';
import { errorOf } from '../engine/failure.js';
import { Said } from '../said.js';
import type { PageRead, ReadAnswer, ReadAsk } from './messages.js';

/** Pixels of a cutting: sharp on a screen of twice as many dots. */
const sidePx = 480;

/** A photo in the thread that reads it. */
export interface Reader {
  readonly read: PageRead;
  /** The photo about a stitch; kept once it was cut out. */
  patch(stitch: number): Promise<CellPatch>;
  close(): void;
}

/** A photo that has been read, with the beads that it was read in. */
export interface Sheet {
  readonly photo: File;
  readonly blank: Pattern;
  readonly colours: number;
  readonly beads: readonly Bead[];
  readonly reader: Reader;
}

/**
 * Reads a photo of a coloured page.
 *
 * @throws RondureError `corner-marks-not-found`, `blank-not-coloured`; a DOMException `AbortError` when it was stopped
 */
export async function readPhoto(
  ask: Omit<Extract<ReadAsk, { what: 'read' }>, 'what'>,
  stop: AbortSignal,
): Promise<Reader> {
  const worker = new Worker(new URL('./read-worker.ts', import.meta.url), { type: 'module' });
  const close = () => worker.terminate();
  const post = (one: ReadAsk, given: Transferable[] = []) => worker.postMessage(one, given);
  const patches = new Map<number, Promise<CellPatch>>();
  const waiting = new Map<number, (patch: CellPatch) => void>();
  try {
    const read = await new Promise<PageRead>((done, fail) => {
      stop.addEventListener('abort', () => fail(new DOMException('', 'AbortError')));
      worker.onerror = ({ message }) => fail(new Said(message));
      worker.onmessage = ({ data }: MessageEvent<ReadAnswer>) => {
        if (data.what === 'failed') fail(errorOf(data.error));
        else if (data.what === 'read') done(data.read);
        else {
          waiting.get(data.stitch)?.(data.patch);
          waiting.delete(data.stitch);
        }
      };
      post({ what: 'read', ...ask }, [ask.picture.data.buffer as ArrayBuffer]);
    });
    return {
      read,
      close,
      patch(stitch) {
        let patch = patches.get(stitch);
        if (!patch) {
          patch = new Promise((done) => waiting.set(stitch, done));
          patches.set(stitch, patch);
          post({ what: 'patch', stitch, sidePx });
        }
        return patch;
      },
    };
  } catch (error) {
    close();
    throw error;
  }
}
