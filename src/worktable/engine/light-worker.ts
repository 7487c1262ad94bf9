import { keepLight } from '../../core/pages/worked/kept-light.js';
import type { KeptLight } from '../../core/pages/worked/kept-light.js';
import { panelGeometry } from '../../core/panel/geometry.js';
import type { Shape } from '../../core/panel/shape.js';

/** To the worker: the panel whose light is wanted. */
export interface LightAsk {
  readonly key: string;
  readonly shape: Shape;
  readonly startDegrees: number;
  readonly widthPx: number;
  readonly withBare: boolean;
}

/** From the worker. */
export interface LightAnswer {
  readonly key: string;
  readonly light: KeptLight;
}

self.onmessage = ({ data }: MessageEvent<LightAsk>) => {
  const { key, shape, startDegrees, widthPx, withBare } = data;
  const light = keepLight(panelGeometry(shape, { startDegrees }), widthPx, withBare);
  const buffers = Object.values(light).flatMap((one) =>
    ArrayBuffer.isView(one) ? [one.buffer] : [],
  );
  (self as unknown as Worker).postMessage(
    { key, light } satisfies LightAnswer,
    buffers as Transferable[],
  );
};
