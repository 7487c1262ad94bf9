import { RondureError } from '../../core/errors.js';
import type { Picture } from '../../core/picture/picture.js';
import { errorOf } from '../engine/failure.js';
import { keepScreenCopy } from '../panel/picture-bitmap.js';
import type { DecodeAnswer } from './decode-messages.js';
import { drawSvg } from './draw-svg.js';
import { isVisible } from './pixels.js';
import { keepSpare } from './spare.js';

let worker: Worker | undefined;
let number = 0;
const waiting = new Map<number, (answer: DecodeAnswer) => void>();

/**
 * Decodes a picture: upright, sRGB, 8-bit RGBA, of an animation the first image. Its header is
 * judged before anything is decoded.
 *
 * @throws RondureError with the sentences of the command line
 */
export async function decodePicture(bytes: Uint8Array, name: string): Promise<Picture> {
  const answer = await ask(bytes, name);
  if ('failed' in answer) throw errorOf(answer.failed);
  if ('svg' in answer) {
    const picture = await drawSvg(answer.svg.text, answer.svg.verdict, name);
    if (!isVisible(picture)) throw new RondureError('picture-invisible', { name });
    return picture;
  }
  const { picture, spare, screen } = answer;
  if (screen) keepScreenCopy(picture, screen);
  keepSpare(picture, spare);
  return picture;
}

/** The thread that opens pictures; started before it is wanted, it does not have to be waited for. */
export function readyDecoder(): Worker {
  if (!worker) {
    worker = new Worker(new URL('./decode-worker.ts', import.meta.url), { type: 'module' });
    worker.onmessage = ({ data }: MessageEvent<DecodeAnswer>) => {
      waiting.get(data.number)?.(data);
      waiting.delete(data.number);
    };
    worker.onerror = ({ message }) => {
      // The thread ended, perhaps for want of memory: the next picture gets a new one.
      for (const [n, done] of waiting) done({ number: n, failed: { message } });
      waiting.clear();
      worker = undefined;
    };
  }
  return worker;
}

function ask(bytes: Uint8Array, name: string): Promise<DecodeAnswer> {
  return new Promise((done) => {
    const own = readyDecoder();
    waiting.set(++number, done);
    own.postMessage({ number, bytes, name });
  });
}
