/** A straight piece, or a piece of a circle about a centre; lengths in millimetres. */
export interface CurvePiece {
  /** End of the piece, x and y. */
  readonly to: readonly [number, number];
  readonly arc?: {
    readonly centre: readonly [number, number];
    readonly radiusMm: number;
    /** Angle that it runs through, radians; positive is clockwise on the page (y points down). */
    readonly sweep: number;
  };
}

/** A closed line of straight pieces and arcs, one after the other; the last ends at `start`. */
export interface Curve {
  readonly start: readonly [number, number];
  readonly pieces: readonly CurvePiece[];
}

/** The same curve, shrunk or grown about the origin and then moved. */
export function movedCurve(curve: Curve, dx: number, dy: number, scale = 1): Curve {
  const moved = ([x, y]: readonly [number, number]): [number, number] => [
    x * scale + dx,
    y * scale + dy,
  ];
  return {
    start: moved(curve.start),
    pieces: curve.pieces.map(({ to, arc }) => ({
      to: moved(to),
      ...(arc && {
        arc: { centre: moved(arc.centre), radiusMm: arc.radiusMm * scale, sweep: arc.sweep },
      }),
    })),
  };
}

/** Ends of the steps of an arc that ends at `to`, each step at most `most` radians. */
export function arcEnds(
  arc: NonNullable<CurvePiece['arc']>,
  to: readonly [number, number],
  most: number,
): (readonly [number, number])[] {
  const [cx, cy] = arc.centre;
  const steps = Math.max(1, Math.ceil(Math.abs(arc.sweep) / most - 1e-9));
  const last = Math.atan2(to[1] - cy, to[0] - cx);
  return Array.from({ length: steps }, (_, k) => {
    if (k === steps - 1) return to;
    const angle = last - arc.sweep * (1 - (k + 1) / steps);
    return [cx + arc.radiusMm * Math.cos(angle), cy + arc.radiusMm * Math.sin(angle)] as const;
  });
}
