import { RondureError } from '../../core/errors.js';
import { scaledOnWhite } from '../../core/pages/surface/scale.js';
import { judgePictureHeader, refuseTooLarge } from '../../core/picture/header/judge.js';
import { unpackGzip } from '../../core/picture/header/unpack.js';
import { svgLimitMegabytes } from '../../core/picture/limits.js';
import type { Picture } from '../../core/picture/picture.js';
import { decodeXml } from '../../core/picture/header/decode-xml.js';
import { judgeSvg } from '../../core/picture/svg/judge.js';
import { failureOf } from '../engine/failure.js';
import type { DecodeAnswer, DecodeAsk } from './decode-messages.js';
import { exactPng, hasNoProfile } from './exact-png.js';
import { isVisible, pixelsOf } from './pixels.js';
import { screenSize } from './screen-size.js';

// Pictures are opened in a thread of their own: a large one takes longer than a finger waits.

const scope = self as unknown as {
  onmessage: (event: MessageEvent<DecodeAsk>) => void;
  postMessage(answer: DecodeAnswer, transfer?: Transferable[]): void;
};

scope.onmessage = async ({ data: { number, bytes, name } }) => {
  try {
    const { format } = judgePictureHeader(bytes, name);
    const svg = svgText(bytes, format, name);
    if (svg !== undefined) {
      scope.postMessage({ number, svg: { text: svg, verdict: judgeSvg(svg, name) } });
      return;
    }
    const picture = await pixelsIn(bytes, format, name);
    if (!isVisible(picture)) throw new RondureError('picture-invisible', { name });
    const { width, height } = picture;
    const size = screenSize(width, height);
    const screen = size && scaledOnWhite(picture, size.width, size.height);
    // A second copy for the thread that chooses beads, so that none has to be made while a finger waits.
    const spare = picture.data.slice();
    const buffers = [picture.data, spare, ...(screen ? [screen.data] : [])].map(
      (one) => one.buffer,
    );
    scope.postMessage({ number, picture, spare, screen }, buffers as Transferable[]);
  } catch (error) {
    scope.postMessage({ number, failed: failureOf(error) });
  }
};

/** The text of an SVG, packed or not; undefined for other pictures. */
function svgText(bytes: Uint8Array, format: string, name: string): string | undefined {
  if (format === 'svg') return decodeXml(bytes);
  if (format !== 'gzip') return undefined;
  const unpacked = unpackGzip(bytes, svgLimitMegabytes * 1e6);
  if (!unpacked) throw damaged(name, format, 'not a packed SVG');
  return decodeXml(unpacked);
}

async function pixelsIn(bytes: Uint8Array, format: string, name: string): Promise<Picture> {
  if (format === 'png' && hasNoProfile(bytes)) {
    try {
      return exactPng(bytes);
    } catch (cause) {
      throw damaged(name, format, (cause as Error).message);
    }
  }
  const bitmap = await createImageBitmap(new Blob([bytes as BlobPart])).catch((cause: Error) => {
    throw damaged(name, format, cause.message);
  });
  refuseTooLarge(bitmap, name);
  return pixelsOf(bitmap);
}

function damaged(name: string, format: string, detail: string): RondureError {
  return new RondureError('picture-damaged', { name, format, detail } as never);
}
