import { finishedEdge, ringLine } from '../../core/panel/edge.js';
import type { PanelGeometry } from '../../core/panel/geometry.js';

interface Outline {
  readonly edge: Path2D;
  readonly wedges: Path2D;
}

const kept = new WeakMap<PanelGeometry, Outline>();

/** The finished edge of a panel and the lines between its wedges, millimetres. */
export function outlineOf(geometry: PanelGeometry): Outline {
  let found = kept.get(geometry);
  if (!found)
    kept.set(geometry, (found = { edge: edgePath(geometry), wedges: wedgePath(geometry) }));
  return found;
}

function edgePath(geometry: PanelGeometry): Path2D {
  const path = new Path2D();
  const ring = finishedEdge(geometry);
  for (let p = 0; p < ring.length; p += 2) {
    if (p === 0) path.moveTo(ring[0], ring[1]);
    else path.lineTo(ring[p], ring[p + 1]);
  }
  path.closePath();
  return path;
}

/** One line a wedge, from round to round where the wedge begins. */
function wedgePath(geometry: PanelGeometry): Path2D {
  const { wedges, rounds } = geometry.shape;
  const path = new Path2D();
  const lines = Array.from({ length: rounds + 1 }, (_, r) => ringLine(geometry, r, wedges));
  for (let k = 0; k < wedges; k++) {
    for (let r = 1; r <= rounds; r++) {
      const { [2 * k]: x, [2 * k + 1]: y } = lines[r];
      if (r === 1) path.moveTo(x, y);
      else path.lineTo(x, y);
    }
  }
  return path;
}
