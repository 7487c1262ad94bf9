import type { Footprints } from '../../panel/footprints.js';
import type { PanelGeometry } from '../../panel/geometry.js';
import type { Panel, Pattern } from '../../pattern/pattern.js';
import type { PatternBead } from '../../beads/bead.js';
import { bareMark, undecidedMark } from '../../pattern/marks.js';
import { beadsOfPanel } from '../../pattern/stitches.js';
import type { Words } from '../../../words/index.js';
import { inkOn } from '../../colour/contrast.js';
import type { Fonts } from '../surface/font.js';
import type { CellMark, GreyFill } from './grey-fills.js';

/** Everything a drawing of one panel is made from. */
export interface PanelSheet {
  /** The pattern that is drawn. */
  readonly pattern: Pattern;
  /** Index into pattern.panels. */
  readonly panel: number;
  /** Its panel as it is laid out. */
  readonly geometry: PanelGeometry;
  /** The cells of its stitches. */
  readonly footprints: Footprints;
  /** Words of its language. */
  readonly words: Words;
  /** Fonts that its texts are set in. */
  readonly fonts: Fonts;
  /** Fills by letter where there is no colour: `greyFills` makes them. */
  readonly greys?: ReadonlyMap<string, GreyFill> | undefined;
  /** Set where it is drawn as the worker sees it; `mirrored` where that is not the bead face. */
  readonly seen?: { readonly mirrored: boolean } | undefined;
}

/** How one kind of stitch is drawn: a bead colour, a bare stitch or one not decided yet. */
export interface CellKind {
  /** Character in the pattern's rounds: a letter, '.' or '_'. */
  readonly mark: string;
  readonly bead?: PatternBead;
  /** Colour of the cell, #rrggbb. */
  readonly fill: string;
  /** What tells it from others of the same grey. */
  readonly cellMark?: CellMark | undefined;
  /** Black or white, whichever reads better on it. */
  readonly ink: string;
  /** Stitches in working order, numbered through the panel. */
  readonly stitches: number[];
}

export const panelOf = (sheet: PanelSheet): Panel => sheet.pattern.panels[sheet.panel];

/** The panel's stitches sorted by kind: beads in the pattern's order, then bare, then undecided. */
export function cellKinds(sheet: PanelSheet): CellKind[] {
  const kinds = new Map<string, CellKind>();
  for (const bead of beadsOfPanel(sheet.pattern, sheet.panel)) {
    const { letter } = bead;
    const grey = sheet.greys?.get(letter);
    const fill = grey?.hex ?? bead.hex;
    const kind = { mark: letter, bead, fill, ink: inkOn(fill), stitches: [] };
    kinds.set(letter, { ...kind, ...(grey && { cellMark: grey.mark }) });
  }
  for (const mark of [bareMark, undecidedMark]) {
    kinds.set(mark, { mark, fill: '#ffffff', ink: '#000000', stitches: [] });
  }
  let s = 0;
  for (const round of panelOf(sheet).rounds) {
    for (const mark of round) kinds.get(mark)?.stitches.push(s++);
  }
  return [...kinds.values()].filter((kind) => kind.bead || kind.stitches.length > 0);
}
