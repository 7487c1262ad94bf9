import { ciede2000 } from '../../src/core/colour/ciede2000.js';
import { linearToLab65 } from '../../src/core/colour/lab.js';
import { srgbToLinear } from '../../src/core/colour/srgb.js';
import type { PanelGeometry } from '../../src/core/panel/geometry.js';
import { crayonMean } from './sketch.js';
import type { Sketch } from './sketch.js';

/** What a panel made of a sketch of known truth is worth. */
export interface Score {
  /** Stitches far from every mark, and how many of them took the paper's bead. */
  paper: number;
  paperKept: number;
  /** Stitches off the crayon that a line crosses for 0.6 stitches or more, and how many kept it. */
  line: number;
  lineKept: number;
  /** Stitches that are neither, beside lines, which took a line's bead. */
  grown: number;
  /** CIEDE2000 of stitches well inside one patch, against its colour as seen on white paper. */
  colour: number[];
}

/**
 * @param stitchMm side of a stitch
 * @param hexOf bead of each stitch
 * @param paperHex the bead that stands for paper; undefined: the one that most paper took
 * @param labOf colour sampled under each stitch
 */
export function scoreOf(
  sketch: Sketch,
  geometry: PanelGeometry,
  stitchMm: number,
  hexOf: (s: number) => string | undefined,
  paperHex: string | undefined,
  labOf: (s: number) => readonly [number, number, number],
): Score {
  const { centres, count } = geometry;
  const x = (s: number) => centres[2 * s] / stitchMm;
  const y = (s: number) => centres[2 * s + 1] / stitchMm;
  const crossed = new Float64Array(count);
  const near = new Float64Array(count).fill(Infinity);
  for (const { points, widthStitches } of sketch.lines) {
    for (let k = 1; k < points.length; k++) {
      const [[ax, ay], [bx, by]] = [points[k - 1], points[k]];
      const length = Math.hypot(bx - ax, by - ay);
      const steps = Math.ceil(length / 0.1);
      for (let t = 0; t < steps; t++) {
        const px = ax + ((t + 0.5) / steps) * (bx - ax);
        const py = ay + ((t + 0.5) / steps) * (by - ay);
        let [best, least] = [-1, 0.75];
        for (let s = 0; s < count; s++) {
          const apart = Math.hypot(x(s) - px, y(s) - py);
          near[s] = Math.min(near[s], apart - widthStitches / 2);
          if (apart < least) [best, least] = [s, apart];
        }
        if (best >= 0) crossed[best] += length / steps;
      }
    }
  }
  const score: Score = { paper: 0, paperKept: 0, line: 0, lineKept: 0, grown: 0, colour: [] };
  const paperBead = paperHex ?? commonest();
  for (let s = 0; s < count; s++) {
    const hex = hexOf(s);
    const isPaper = hex === paperBead;
    const depths = sketch.patches.map((patch) => depthIn(patch, x(s), y(s)));
    const inside = depths.filter((depth) => depth > 0.9).length;
    if (inside === 0 && depths.every((depth) => depth < -0.9)) {
      if (near[s] > 0.9) {
        score.paper++;
        if (isPaper) score.paperKept++;
      } else if (crossed[s] >= 0.6) {
        score.line++;
        if (!isPaper) score.lineKept++;
      } else if (!isPaper && crossed[s] < 0.2) score.grown++;
      continue;
    }
    if (inside !== 1 || near[s] < 0.9 || depths.some((d) => d > -0.9 && d <= 0.9)) continue;
    const { colour } = sketch.patches[depths.findIndex((depth) => depth > 0.9)];
    const [r, g, b] = colour.map((c) => 1 - crayonMean * (1 - srgbToLinear[c]));
    score.colour.push(ciede2000(...linearToLab65(r, g, b), ...labOf(s)));
  }
  return score;

  function commonest(): string | undefined {
    const uses = new Map<string | undefined, number>();
    for (let s = 0; s < count; s++) {
      if (near[s] < 0.9 || sketch.patches.some((patch) => depthIn(patch, x(s), y(s)) > -0.9))
        continue;
      uses.set(hexOf(s), (uses.get(hexOf(s)) ?? 0) + 1);
    }
    return [...uses].reduce((a, b) => (b[1] > a[1] ? b : a))[0];
  }
}

/** Roughly how far inside an ellipse a place lies; negative outside. */
function depthIn(patch: Sketch['patches'][number], x: number, y: number): number {
  const [u, v] = [x - patch.x, y - patch.y];
  const r = Math.hypot(u / patch.halfWidth, v / patch.halfHeight);
  const slope = Math.hypot(u / patch.halfWidth ** 2, v / patch.halfHeight ** 2) / Math.max(r, 1e-9);
  return (1 - r) / Math.max(slope, 1e-9);
}
