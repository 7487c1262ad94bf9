import { hexToLab65 } from './colour/lab.js';
import { nearestBead } from './choice/choose.js';
import { parseHex } from './colour/hex.js';
import { linearToLab65 } from './colour/lab.js';
import { bareUnderFrame } from './frame/plan.js';
import { panelFootprints } from './geometry/footprints.js';
import { panelGeometry } from './geometry/panel.js';
import type { Pattern, PatternBead } from './pattern/schema.js';
import type { Picture } from './picture.js';
import { samplePanel } from './sampling/sample.js';
import { pictureFromPng } from './thumbnail.js';

/**
 * What a panel would look like if its chart were drawn without lean: the picture sampled as if
 * turn were 0. Shown at the real centres it comes out twisted.
 *
 * @returns bead of each stitch in working order, undefined where bare; and the picture it was
 *   sampled from. Undefined when the pattern keeps no picture.
 */
export function sampledWithoutTurn(
  pattern: Pattern,
  panel: number,
): { beadOf: (PatternBead | undefined)[]; picture: Picture } | undefined {
  const { picture: entry, startDegrees } = pattern.panels[panel];
  if (!entry) return undefined;
  const picture = pictureFromPng(entry.thumbnail);
  const geometry = panelGeometry(pattern.shape, { startDegrees, withoutTurn: true });
  const place = {
    ...entry.place,
    mmPerPixel: (entry.place.mmPerPixel * entry.width) / picture.width,
  };
  const background = entry.background ?? '#ffffff';
  const colours = samplePanel({
    picture,
    geometry,
    footprints: panelFootprints(geometry),
    place,
    art: entry.art,
    ...(entry.paper && { paper: true }),
    background: background === 'bare' ? 'bare' : parseHex(background)!,
  });
  if (pattern.frame) {
    const upright = panelGeometry(pattern.shape, { startDegrees });
    bareUnderFrame(pattern.frame, upright).forEach((one, s) => (colours.bare[s] ||= one));
  }
  const palette = new Float64Array(pattern.beads.flatMap((bead) => hexToLab65(bead.hex)));
  const beadOf = Array.from({ length: geometry.count }, (_, s) => {
    if (colours.bare[s] || pattern.beads.length === 0) return undefined;
    const [r, g, b] = colours.linear.subarray(3 * s, 3 * s + 3);
    return pattern.beads[nearestBead(palette, ...linearToLab65(r, g, b))];
  });
  return { beadOf, picture };
}
