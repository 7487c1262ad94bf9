/** What a purse frame's measurements must be for it to be one; lengths in millimetres. */
export interface FrameMeasures {
  /** Half an ellipse; straight with rounded corners; an ellipse that bends in again. */
  readonly kind: 'half-round' | 'squared' | 'oval';
  /** At its widest, 20 to 400 mm. */
  readonly widthMm: number;
  /** From the line between the hinges to the top, 5 to 300 mm. */
  readonly heightMm: number;
  /** Of a squared frame, 0 mm up to its height and to half its width. */
  readonly cornerRadiusMm?: number | undefined;
  /** Between the hinges of an oval frame, 0.3 to 1 times its width, millimetres. */
  readonly hingeWidthMm?: number | undefined;
  /** Of a frame that is glued on, 0.5 to 15 mm. */
  readonly channelDepthMm?: number | undefined;
  /** Of a frame that is sewn on, 1 to 20 mm. */
  readonly holeSpacingMm?: number | undefined;
}

/** A purse frame as it was measured, and how a panel is to sit in it: its stretch of the rim is centred at the top. */
export interface Frame extends FrameMeasures {
  /** How the panel is fixed to it: sewn through holes, or glued into a channel. */
  readonly fixing: 'sewn' | 'glued';
  /** Wished width of the panel as worn, over the width of the frame: 1 to 2. */
  readonly ratio: number;
  /** By how much the rim in the frame is longer than the rail, per cent: -10 to 30. */
  readonly gatherPercent: number;
  /** Rounds without beads under the frame, counted from the rim: a whole number, 0 to 80. */
  readonly bareRounds?: number | undefined;
}

/** How a panel may sit in a frame; its measurements are checked together, by `frameFault`. */
export const frameLimits = {
  ratio: { least: 1, most: 2 },
  gatherPercent: { least: -10, most: 30 },
  /** In a file; fewer may be asked for. */
  bareRounds: { least: 0, most: 80 },
} as const;

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
