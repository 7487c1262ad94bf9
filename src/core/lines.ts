/** A point in millimetres, x right and y down. */
export type Spot = readonly [x: number, y: number];

/** Length of one step along a smooth line, millimetres. */
const stepMm = 0.35;

/**
 * A smooth line through spots: a centripetal Catmull-Rom spline, which never loops between two
 * spots (Yuksel, Schaefer and Keyser, Parameterization and applications of Catmull-Rom curves, 2011).
 */
export function smooth(spots: readonly Spot[], closed = false): Spot[] {
  const many = spots.length;
  if (many < 3) return [...spots];
  const at = (n: number): Spot => {
    if (closed) return spots[(n + many) % many];
    if (n < 0) return mirrored(spots[1], spots[0]);
    return n < many ? spots[n] : mirrored(spots[many - 2], spots[many - 1]);
  };
  const line: Spot[] = [spots[0]];
  for (let n = 0; n < (closed ? many : many - 1); n++) {
    const four = [at(n - 1), at(n), at(n + 1), at(n + 2)];
    const steps = Math.max(2, Math.ceil(apart(four[1], four[2]) / stepMm));
    for (let k = 1; k <= steps; k++) line.push(between(four, k / steps));
  }
  return line;
}

/** The lines that run beside a line, half its width off; in the order of the line. */
export function besides(line: readonly Spot[], wideMm: number): [left: Spot[], right: Spot[]] {
  const sides: [Spot[], Spot[]] = [[], []];
  line.forEach(([x, y], n) => {
    const [ax, ay] = line[Math.max(0, n - 1)];
    const [bx, by] = line[Math.min(line.length - 1, n + 1)];
    const long = Math.hypot(bx - ax, by - ay) || 1;
    const [nx, ny] = [((by - ay) / long) * (wideMm / 2), ((ax - bx) / long) * (wideMm / 2)];
    sides[0].push([x + nx, y + ny]);
    sides[1].push([x - nx, y - ny]);
  });
  return sides;
}

/** Part of a circle or an ellipse, angles in degrees clockwise from 3 o'clock. */
export function arc(centre: Spot, radii: Spot | number, from: number, to: number): Spot[] {
  const [rx, ry] = typeof radii === 'number' ? [radii, radii] : radii;
  const steps = Math.max(4, Math.ceil(Math.abs(to - from) / 5));
  return Array.from({ length: steps + 1 }, (_, k) => {
    const angle = ((from + ((to - from) * k) / steps) * Math.PI) / 180;
    return [centre[0] + rx * Math.cos(angle), centre[1] + ry * Math.sin(angle)];
  });
}

/** Turns spots about one of them and moves them there; degrees clockwise. */
export function placed(spots: readonly Spot[], [x, y]: Spot, degrees: number): Spot[] {
  const [c, s] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  return spots.map(([u, v]) => [x + c * u - s * v, y + s * u + c * v]);
}

/** A line to be gone along, and how far along it each of its spots lies. */
export function goneAlong(line: readonly Spot[]): {
  readonly far: readonly number[];
  /** The place so far along it, within its length. */
  at(mm: number): Spot;
} {
  const far = [0];
  for (let n = 1; n < line.length; n++) far.push(far[n - 1] + apart(line[n - 1], line[n]));
  const whole = far[far.length - 1];
  return {
    far,
    at(mm) {
      const wanted = Math.min(whole, Math.max(0, mm));
      let n = 1;
      while (n < line.length - 1 && far[n] < wanted - 1e-9) n++;
      const share = (wanted - far[n - 1]) / (far[n] - far[n - 1] || 1);
      const [p, q] = [line[n - 1], line[n]];
      return [p[0] + share * (q[0] - p[0]), p[1] + share * (q[1] - p[1])];
    },
  };
}

/** The part of a line between two shares of its length, 0 to 1. */
export function part(line: readonly Spot[], from: number, to: number): Spot[] {
  const { far, at } = goneAlong(line);
  const [a, b] = [from, to].map((share) => share * far[far.length - 1]);
  return [at(a), ...line.filter((_, n) => far[n] > a + 1e-9 && far[n] < b - 1e-9), at(b)];
}

export const apart = (a: Spot, b: Spot): number => Math.hypot(a[0] - b[0], a[1] - b[1]);

const mirrored = (spot: Spot, about: Spot): Spot => [
  2 * about[0] - spot[0],
  2 * about[1] - spot[1],
];

/** Barry and Goldman's pyramid between the second and the third of four spots. */
function between(four: readonly Spot[], share: number): Spot {
  const t = [0];
  for (let n = 1; n < 4; n++) t.push(t[n - 1] + Math.sqrt(apart(four[n - 1], four[n])) + 1e-9);
  const u = t[1] + share * (t[2] - t[1]);
  const mix = (a: Spot, b: Spot, from: number, to: number): Spot => {
    const w = (u - from) / (to - from);
    return [a[0] + w * (b[0] - a[0]), a[1] + w * (b[1] - a[1])];
  };
  const a = [0, 1, 2].map((n) => mix(four[n], four[n + 1], t[n], t[n + 1]));
  const b = [0, 1].map((n) => mix(a[n], a[n + 1], t[n], t[n + 2]));
  return mix(b[0], b[1], t[1], t[2]);
}
