import type { Picture } from '../../core/picture/picture.js';
import type { SvgVerdict } from '../../core/picture/svg/judge.js';
import type { Failure } from '../engine/failure.js';

/** To the worker: a picture file. */
export interface DecodeAsk {
  readonly number: number;
  readonly bytes: Uint8Array;
  readonly name: string;
}

/** From the worker: its pixels, or a sound SVG, which only the page itself can draw. */
export type DecodeAnswer = { readonly number: number } & (
  | {
      readonly picture: Picture;
      /** The same pixels once more. */
      readonly spare: Picture['data'];
      /** Smaller, for the screen, where the picture is large. */
      readonly screen: Picture | undefined;
    }
  | { readonly svg: { readonly text: string; readonly verdict: SvgVerdict } }
  | { readonly failed: Failure }
);
