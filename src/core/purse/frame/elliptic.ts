/** Each turn brings the arguments four times nearer to one another; 30 are more than enough. */
const mostTurns = 60;

/**
 * Carlson's symmetric elliptic integral of the first kind, R_F(x, y, z), by duplication; at most
 * one argument may be zero. Relative error below 1e-14.
 * Source: B. C. Carlson, Numerical computation of real or complex elliptic integrals, Numerical
 * Algorithms 10 (1995); DLMF 19.36(i).
 */
export function carlsonRF(x: number, y: number, z: number): number {
  let [a, b, c] = [x, y, z];
  for (let turn = 0; turn < mostTurns; turn++) {
    const mean = (a + b + c) / 3;
    const [dx, dy] = [1 - a / mean, 1 - b / mean];
    const dz = -dx - dy;
    if (Math.max(Math.abs(dx), Math.abs(dy), Math.abs(dz)) < 1e-3) {
      const e2 = dx * dy - dz * dz;
      const e3 = dx * dy * dz;
      const series = 1 - e2 / 10 + e3 / 14 + (e2 * e2) / 24 - (3 * e2 * e3) / 44;
      return series / Math.sqrt(mean);
    }
    const grow = sumOfRoots(a, b, c);
    [a, b, c] = [(a + grow) / 4, (b + grow) / 4, (c + grow) / 4];
  }
  return NaN;
}

/**
 * Carlson's symmetric elliptic integral of the second kind, R_D(x, y, z), by duplication; z above
 * zero, at most one of x and y zero. Relative error below 1e-14; source as for `carlsonRF`.
 */
export function carlsonRD(x: number, y: number, z: number): number {
  let [a, b, c] = [x, y, z];
  let sum = 0;
  let power = 1;
  for (let turn = 0; turn < mostTurns; turn++) {
    const mean = (a + b + 3 * c) / 5;
    const [dx, dy] = [1 - a / mean, 1 - b / mean];
    const dz = -(dx + dy) / 3;
    if (Math.max(Math.abs(dx), Math.abs(dy), Math.abs(dz)) < 1e-3) {
      const e2 = dx * dy - 6 * dz * dz;
      const e3 = (3 * dx * dy - 8 * dz * dz) * dz;
      const e4 = 3 * (dx * dy - dz * dz) * dz * dz;
      const e5 = dx * dy * dz * dz * dz;
      const series =
        1 -
        (3 * e2) / 14 +
        e3 / 6 +
        (9 * e2 * e2) / 88 -
        (3 * e4) / 22 -
        (9 * e2 * e3) / 52 +
        (3 * e5) / 26;
      return 3 * sum + (power * series) / (mean * Math.sqrt(mean));
    }
    const grow = sumOfRoots(a, b, c);
    sum += power / (Math.sqrt(c) * (c + grow));
    power /= 4;
    [a, b, c] = [(a + grow) / 4, (b + grow) / 4, (c + grow) / 4];
  }
  return NaN;
}

function sumOfRoots(a: number, b: number, c: number): number {
  const [x, y, z] = [Math.sqrt(a), Math.sqrt(b), Math.sqrt(c)];
  return x * y + x * z + y * z;
}

/**
 * Length of the arc of an ellipse from the end of its half-axis b over the eccentric angle φ:
 * ∫₀^φ √(a²cos²t + b²sin²t) dt = a·E(φ | 1 - b²/a²), the incomplete elliptic integral of the
 * second kind (DLMF 19.25.9); b may be longer than a.
 *
 * @param angle φ, radians, 0 to π
 */
export function ellipseArc(a: number, b: number, angle: number): number {
  if (b === 0) return angle > Math.PI / 2 ? a * (2 - Math.sin(angle)) : a * Math.sin(angle);
  if (angle > Math.PI / 2) {
    return 2 * ellipseArc(a, b, Math.PI / 2) - ellipseArc(a, b, Math.PI - angle);
  }
  const s = Math.sin(angle);
  const cos2 = 1 - s * s;
  const m = 1 - (b * b) / (a * a);
  const rest = 1 - m * s * s;
  return a * (s * carlsonRF(cos2, rest, 1) - ((m * s * s * s) / 3) * carlsonRD(cos2, rest, 1));
}
