import { bare } from './bead.js';
import { decideBeadsTogether } from './decide-beads.js';
import type { BeadWish } from './decide-beads.js';
import { RondureError, warning } from './errors.js';
import type { Warning } from './errors.js';
import { acrossMm, roundsForAcross } from './geometry/edge.js';
import { bareRoundsOf, bareUnderFrame, frameWarnings, roundsForFrame } from './frame/plan.js';
import { backStartDegrees, pairStartDegrees } from './geometry/meet.js';
import { panelGeometry } from './geometry/panel.js';
import { saysNothing } from './importance/mask.js';
import type { Mask } from './importance/mask.js';
import { letterBeads, roundStrings } from './lettering.js';
import { mistakenWarnings } from './mistaken.js';
import { panelFacts } from './pattern/report.js';
import type { PanelFacts } from './pattern/report.js';
import type { Frame, Pattern, PatternBead } from './pattern/schema.js';
import type { Picture } from './picture.js';
import { picturePanel } from './picture-panel.js';
import type { PicturePanel } from './picture-panel.js';
import type { PlaceWish } from './sampling/place.js';
import { completeShape, shapeWarnings } from './shape.js';
import type { Shape, ShapeWish } from './shape.js';
import type { StockReport } from './stock/report.js';

/** Share of lost lines from which the maker is told. */
const thinLinesFrom = 0.3;

/** Everything a pattern is made from: one panel, or two with `back`. */
export interface PanelWish extends BeadWish {
  /** The picture, upright. */
  picture: Picture;
  /** File name kept in the pattern. */
  pictureName: string;
  /** 1 to 200 characters. */
  title: string;
  /** Without `rounds` when `acrossMm` is given. */
  shape: Omit<ShapeWish, 'rounds'> & { rounds?: number };
  /** Wished size across, millimetres: the nearest number of rounds is taken. */
  acrossMm?: number;
  /** The purse frame: gives `rounds` where neither they nor `acrossMm` are given, and bares its rim. */
  frame?: Frame;
  /** Face angle of the start mark, clockwise from 12 o’clock; the rim's step at the top when absent. */
  startDegrees?: number;
  /** How the picture lies on the panel. */
  place: PlaceWish;
  /** `photo` keeps mean colours, `drawing` keeps outlines, `auto` decides. */
  art: 'auto' | 'photo' | 'drawing';
  /** The picture shows a drawing on paper: its light is evened out, its lines are strengthened. */
  paper?: boolean;
  /** What matters most, painted white on a picture laid like the main one; for its panel only. */
  mask?: Mask;
  /** A second panel, sewn to the first: same shape, same hand, same beads, upright as well. */
  back?: BackWish;
  /** Share that a clearly darker colour must cover to win a stitch of a drawing, 0 to 1. */
  darkCover?: number;
}

/** What a second panel shows: the same picture, one bead all over (a palette index), or its own picture. */
export type BackWish = 'same' | { plain: number } | { picture: Picture; pictureName: string };

/** One panel of the result, with what only a panel with a picture has. */
export interface MadePanel extends PanelFacts {
  meanDifference?: number;
  worstDifference?: number;
  art?: 'photo' | 'drawing';
  artDecided?: boolean;
}

/**
 * What a maker wants to know of the result, besides the pattern itself. Stitches, beads, differences
 * and art are those of the first panel, the front; `panels` has them for each. Colours, stock and
 * warnings are for all panels together.
 */
export interface PanelReport {
  rounds: number;
  /** N·R(R+1)/2. */
  stitches: number;
  /** Stitches that carry a bead. */
  beads: number;
  /** Bead colours used. */
  colours: number;
  /** The largest number of colours that was allowed. */
  mostColours: number;
  /** Size of the finished panel, millimetres. */
  acrossMm: number;
  /**
   * Mean and largest CIEDE2000 of a stitch's colour in the picture and its bead, after tidying or
   * dithering; `choice.objective` is before.
   */
  meanDifference: number;
  worstDifference: number;
  /** Steps that the proof of the choice took. */
  proofSteps: number;
  art: 'photo' | 'drawing';
  /** Whether `art` was decided here, not asked for. */
  artDecided: boolean;
  /** In the order of the pattern's panels. */
  panels: MadePanel[];
  warnings: Warning[];
  /** With `useStock`: what is taken from the jars. */
  stock?: StockReport;
}

/**
 * The main job: a picture and a palette in, a whole pattern out. Pure: the same pixels give the
 * same bytes in every engine. `examples/` holds whole programs around it.
 *
 * @throws RondureError `shape-impossible`, `across-out-of-reach`, `polygon-needs-end-increase`,
 *   `nothing-to-bead`, those of `chooseBeads`, and with a frame those of `planFrame` and
 *   `roundsForFrame`
 */
export function makePattern(wish: PanelWish): { pattern: Pattern; report: PanelReport } {
  const shape = shapeFor(wish);
  const starts = startsFor(wish, shape);
  const frame = wish.frame && { ...wish.frame, bareRounds: bareRoundsOf(wish.frame, shape) };
  const framed = { ...wish, ...(frame && { frame }) };
  const frontGeometry = panelGeometry(shape, { startDegrees: starts.front });
  const frameNotes = frame ? frameWarnings(frame, frontGeometry) : [];
  const front = picturePanel(framed, frontGeometry, wish);
  const back =
    wish.back === undefined ? undefined : backPanel(framed, wish.back, front, starts.back);
  const pictured = [front, ...(back?.pictured ? [back.pictured] : [])];
  const chosen = decideBeadsTogether(
    wish,
    pictured.map(({ panel }) => panel),
    back?.plain,
  );
  const beadOf = [
    ...chosen.panels.map((one) => one.beadOf),
    ...(back?.plain ? [back.plain.beadOf] : []),
  ];
  const { count } = frontGeometry;
  const lettered = letterBeads(wish.beads, Int16Array.from(beadOf.flatMap((one) => [...one])));
  const panels = beadOf.map((_, n) => ({
    name: n === 0 ? 'front' : 'back',
    startDegrees: n === 0 ? starts.front : starts.back,
    ...(pictured[n] && { picture: pictured[n].entry }),
    rounds: roundStrings(frontGeometry, (s) => lettered.letterOf(n * count + s)),
  }));
  const pattern: Pattern = {
    format: 'rondure-pattern',
    version: 1,
    title: wish.title,
    shape,
    beads: lettered.beads,
    panels,
    choice: chosen.choice,
    ...(frame && { frame }),
  };
  const warnings = [
    ...shapeWarnings(shape, wish.shape.beadDiameterMm),
    ...frameNotes,
    ...chosen.warnings,
  ];
  const { mask: masked } = front.panel;
  if (masked && saysNothing(masked))
    warnings.push(warning('mask-says-nothing', { name: wish.mask!.name }));
  for (const kept of wish.keep ?? []) {
    if (!lettered.order.includes(kept)) {
      warnings.push(warning('kept-bead-unused', { id: wish.beads[kept].id }));
    }
  }
  warnings.push(...mistakenWarnings(lettered.beads));
  warnings.push(...lostWarnings(wish, pictured, lettered.beads));
  const artDecided = !wish.paper && wish.art === 'auto';
  const facts = panelFacts(pattern);
  const { mean: meanDifference, worst: worstDifference } = chosen.panels[0];
  const report: PanelReport = {
    rounds: shape.rounds,
    stitches: count,
    beads: facts[0].beads,
    colours: lettered.beads.length,
    mostColours: wish.colours,
    acrossMm: acrossMm(shape),
    meanDifference,
    worstDifference,
    proofSteps: chosen.proofSteps,
    art: front.entry.art,
    artDecided,
    panels: facts.map((one, n) => {
      const made = chosen.panels.at(n);
      if (!made) return one;
      const { art } = pictured[n].entry;
      return { ...one, meanDifference: made.mean, worstDifference: made.worst, art, artDecided };
    }),
    warnings,
    ...(chosen.stock && { stock: chosen.stock }),
  };
  return { pattern, report };
}

/** Where round 1 of each panel begins; two panels meet rim on rim. */
function startsFor({ back, startDegrees }: PanelWish, shape: Shape) {
  const usual = back === undefined ? panelGeometry(shape).startDegrees : pairStartDegrees(shape);
  const front = startDegrees ?? usual;
  return { front, back: backStartDegrees(shape, front) };
}

/** The back: a picture of its own, the front's again, or one bead all over. */
function backPanel(wish: PanelWish, back: BackWish, front: PicturePanel, startDegrees: number) {
  const { shape, startDegrees: frontStart } = front.panel.geometry;
  if (back === 'same' && startDegrees === frontStart) return { pictured: front };
  const geometry = panelGeometry(shape, { startDegrees });
  if (back !== 'same' && 'plain' in back) {
    const underFrame = wish.frame && bareUnderFrame(wish.frame, geometry);
    const beadOf = new Int16Array(geometry.count).fill(back.plain);
    underFrame?.forEach((one, s) => (beadOf[s] = one ? bare : beadOf[s]));
    const stitches = beadOf.reduce((sum, one) => sum + (one === bare ? 0 : 1), 0);
    return { plain: { bead: back.plain, stitches, beadOf } };
  }
  // The mask belongs to the front's picture.
  const source = back === 'same' ? wish : back;
  return { pictured: picturePanel(wish, geometry, source) };
}

/** Whether a picture was lost on its way to the panel. */
function lostWarnings(
  { back, beads: palette, colours, leaveOut = [] }: PanelWish,
  pictured: readonly PicturePanel[],
  beads: readonly PatternBead[],
): Warning[] {
  const lost = pictured.filter(
    ({ lostLines }, n) => lostLines >= thinLinesFrom && !(n > 0 && back === 'same'),
  );
  const told = lost.map(({ lostLines, entry }) => {
    const percent = Math.round(100 * lostLines);
    const several = pictured.length > 1 && back !== 'same';
    return warning('thin-lines-lost', { percent, ...(several && { file: entry.file }) });
  });
  const [first, second] = beads;
  // Where only one colour can be had, one colour is no surprise.
  const most = Math.min(colours, palette.length - new Set(leaveOut).size);
  if (told.length > 0 || second || most < 2) return told;
  return [warning('one-colour-only', { letter: first.letter, name: first.name })];
}

function shapeFor(wish: PanelWish): Shape {
  const { acrossMm: across } = wish;
  const first = completeShape({ ...wish.shape, rounds: wish.shape.rounds ?? 20 });
  if (wish.frame && wish.shape.rounds === undefined && across === undefined) {
    return { ...first, rounds: roundsForFrame(wish.frame, first, wish.startDegrees) };
  }
  if (across === undefined) return first;
  const rounds = roundsForAcross(first, across);
  const shape = { ...first, rounds };
  const got = acrossMm(shape);
  const perRound = acrossMm({ ...first, rounds: rounds + 1 }) - got;
  if (Math.abs(got - across) > perRound) {
    throw new RondureError('across-out-of-reach', {
      gotMm: across,
      leastMm: acrossMm({ ...first, rounds: 2 }),
      mostMm: acrossMm({ ...first, rounds: 80 }),
    });
  }
  return shape;
}
