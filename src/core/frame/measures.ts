/** What a purse frame's measurements must be for it to be one; lengths in millimetres. */
export interface FrameMeasures {
  readonly kind: 'half-round' | 'squared' | 'oval';
  readonly widthMm: number;
  readonly heightMm: number;
  readonly cornerRadiusMm?: number | undefined;
  readonly hingeWidthMm?: number | undefined;
  readonly channelDepthMm?: number | undefined;
  readonly holeSpacingMm?: number | undefined;
}

/** A measurement that cannot be, and where it should lie. */
export interface FrameFault {
  readonly what: 'width' | 'height' | 'corner' | 'hinge' | 'channel' | 'holes';
  readonly gotMm: number;
  readonly leastMm: number;
  readonly mostMm: number;
}

/** Corner radius of a squared frame that was not measured (no source: measure yours). */
export const usualCornerMm = 15;
/** Distance of the hinges over the width of an oval frame that was not measured (no source). */
export const usualHingeShare = 0.8;
/** Depth of a glued frame's channel, 3 to 5 mm, from memory, unchecked. */
export const usualChannelMm = 4;
/** Distance of a sewn frame's holes, 3 to 5 mm, from memory, unchecked. */
export const usualHolesMm = 4;

/** The corner radius as measured, or the usual one as far as the frame has room for it. */
export function cornerOf({ cornerRadiusMm, widthMm, heightMm }: FrameMeasures): number {
  return cornerRadiusMm ?? Math.min(usualCornerMm, heightMm, widthMm / 2);
}

/** The distance of the hinges as measured, or the usual share of the width. */
export function hingesOf({ hingeWidthMm, widthMm }: FrameMeasures): number {
  return hingeWidthMm ?? usualHingeShare * widthMm;
}

/** The first measurement that no frame can have, if there is one. */
export function frameFault(frame: FrameMeasures): FrameFault | undefined {
  const { widthMm, heightMm } = frame;
  const limits: [FrameFault['what'], number | undefined, number, number][] = [
    ['width', widthMm, 20, 400],
    ['height', heightMm, 5, 300],
    ['corner', frame.cornerRadiusMm, 0, Math.min(heightMm, widthMm / 2)],
    ['hinge', frame.hingeWidthMm, 0.3 * widthMm, widthMm],
    ['channel', frame.channelDepthMm, 0.5, 15],
    ['holes', frame.holeSpacingMm, 1, 20],
  ];
  for (const [what, gotMm, leastMm, mostMm] of limits) {
    if (gotMm !== undefined && !(gotMm >= leastMm - 1e-9 && gotMm <= mostMm + 1e-9)) {
      return { what, gotMm, leastMm, mostMm };
    }
  }
  return undefined;
}
