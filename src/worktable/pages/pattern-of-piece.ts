import type { Pattern } from '../../core/pattern/pattern.js';
import type { Answer, Ask } from '../engine/messages.js';
import { errorOf } from '../engine/failure.js';
import { withHand } from '../engine/finish.js';
import type { Chosen } from '../engine/finish.js';
import { panelWish } from '../engine/panel-wish.js';
import { Said } from '../said.js';
import type { Piece } from '../store/piece.js';

/**
 * The pattern of a piece that does not lie on the table; its beads are chosen in a thread of their own.
 * Undefined where there is nothing to make one of.
 *
 * @throws RondureError, Said
 */
export async function patternOfPiece(piece: Piece): Promise<Pattern | undefined> {
  const wish = panelWish(piece);
  if (!wish) return piece.opened && withHand({ pattern: piece.opened }, piece).pattern;
  const worker = new Worker(new URL('../engine/chart-worker.ts', import.meta.url), {
    type: 'module',
  });
  try {
    const chosen = await new Promise<Chosen>((done, fail) => {
      worker.onerror = ({ message }) => fail(new Said(message));
      worker.onmessage = ({ data }: MessageEvent<Answer>) => {
        if (data.kind === 'settled') done(data);
        if (data.kind === 'failed') fail(errorOf(data.error));
      };
      worker.postMessage({ number: 0, part: wish, settle: true } satisfies Ask);
    });
    return withHand(chosen, piece).pattern;
  } finally {
    worker.terminate();
  }
}
