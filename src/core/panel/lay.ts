import { alike } from '../remember.js';
import { panelFootprints } from './footprints.js';
import type { Footprints } from './footprints.js';
import { panelGeometry } from './geometry.js';
import type { GeometryOptions, PanelGeometry } from './geometry.js';
import type { Shape } from './shape.js';

/**
 * A panel laid out: what depends on its shape and its start alone, made once and used by whoever
 * samples, weighs, draws or measures it.
 */
export interface Lay {
  /** Centres, edge and turn. */
  readonly geometry: PanelGeometry;
  /** Made when they are first asked for. */
  readonly footprints: Footprints;
}

interface Kept {
  /** The shape as it was then: who writes into one gets another panel. */
  readonly shape: Shape;
  readonly lays: Map<string, Lay>;
}

/** Lives as long as the shape that it belongs to. */
const kept = new WeakMap<Shape, Kept>();

/**
 * Lays a panel out. A shape is laid out once for each start: asked again for the same shape, as a
 * pattern hands it on, it gives the same panel.
 */
export function layPanel(shape: Shape, options: GeometryOptions = {}): Lay {
  let known = kept.get(shape);
  if (!known || !alike(known.shape, { ...shape })) {
    known = { shape: { ...shape }, lays: new Map() };
    kept.set(shape, known);
  }
  const key = `${options.startDegrees} ${options.withoutTurn === true}`;
  const found = known.lays.get(key);
  if (found) return found;
  const lay = laidOut(panelGeometry(shape, options));
  known.lays.set(key, lay);
  return lay;
}

function laidOut(geometry: PanelGeometry): Lay {
  let footprints: Footprints | undefined;
  return {
    geometry,
    get footprints() {
      return (footprints ??= panelFootprints(geometry));
    },
  };
}
