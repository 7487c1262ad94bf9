import type { SharedDecision } from './beads/decide-beads.js';
import { letterBeads, roundStrings } from './beads/lettering.js';
import { mistakenWarnings } from './beads/mistaken.js';
import { warning } from './errors.js';
import type { Warning } from './errors.js';
import type { PanelReport } from './made.js';
import { acrossMm } from './panel/edge.js';
import type { Lay } from './panel/lay.js';
import { shapeLimits } from './panel/limits.js';
import { shapeWarnings } from './panel/shape.js';
import type { Shape } from './panel/shape.js';
import { makerWish } from './pattern/maker-wish.js';
import { panelFacts } from './pattern/report.js';
import type { Pattern } from './pattern/pattern.js';
import type { BeadOfStitch, PatternBead } from './beads/bead.js';
import type { PlainPanel } from './beads/stock/plain-panel.js';
import { saysNothing } from './picture/importance/mask.js';
import type { CutOff } from './picture/cut-off.js';
import type { PicturePanel } from './picture/picture-panel.js';
import type { Frame } from './purse/frame/measures.js';
import type { Steps } from './steps.js';
import type { PanelWish } from './wish.js';

/** All panels of a wish, laid out and coloured. */
export interface PanelsUnderWork {
  readonly shape: Shape;
  readonly frame: Frame | undefined;
  /** What the maker should know of frame and panel. */
  readonly frameNotes: readonly Warning[];
  readonly lays: readonly Lay[];
  /** Those with a picture, the front first. */
  readonly pictured: readonly PicturePanel[];
  /** A back of one bead. */
  readonly plain: (PlainPanel & { beadOf: BeadOfStitch }) | undefined;
}

/** Share of lost lines from which the maker is told. */
const thinLinesFrom = 0.3;
/** Share of a repeated motif's stitches that hold several colours from which a word is said. */
const tooFineFrom = 0.5;
/** Shares of edges and of small features below which the maker is told (judged by eye). */
const [fewEdges, fewFeatures] = [0.6, 0.5];

/** The pattern of panels whose beads are decided, and what its maker wants to know of it. */
export function* patternOf(
  wish: PanelWish,
  { shape, frame, frameNotes, lays, pictured, plain }: PanelsUnderWork,
  chosen: SharedDecision,
): Steps<{ pattern: Pattern; report: PanelReport }> {
  const [{ geometry }] = lays;
  const { count } = geometry;
  const beadOf = [...chosen.panels.map((one) => one.beadOf), ...(plain ? [plain.beadOf] : [])];
  const lettered = letterBeads(wish.beads, Int16Array.from(beadOf.flatMap((one) => [...one])));
  // The small copy of a picture that is new takes longest.
  for (const one of pictured) {
    yield { stage: 'pattern' };
    one.thumbnail();
  }
  yield { stage: 'pattern' };
  const panels = beadOf.map((_, n) => ({
    name: n === 0 ? 'front' : 'back',
    startDegrees: lays[n].geometry.startDegrees,
    ...(pictured[n] && {
      picture: { ...pictured[n].entry, thumbnail: pictured[n].thumbnail() },
    }),
    rounds: roundStrings(geometry, (s) => lettered.letterOf(n * count + s)),
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
    wish: makerWish(wish),
  };
  yield { stage: 'pattern' };
  const warnings = [
    ...shapeWarnings(shape, wish.shape.beadDiameterMm),
    ...frameNotes,
    ...chosen.warnings,
    ...maskWarnings(wish, pictured),
    ...groundWarnings(wish, pictured),
    ...unusedWarnings(wish, lettered.order),
    ...mistakenWarnings(lettered.beads),
    ...lostWarnings(wish, pictured, lettered.beads, shape.rounds),
    ...keptWarnings(wish, pictured, chosen),
  ];
  yield { stage: 'pattern' };
  const cuts: CutOff[] = [];
  for (const one of pictured) {
    cuts.push(one.cutOff());
    yield { stage: 'pattern' };
  }
  yield { stage: 'pattern' };
  return { pattern, report: reportOf(wish, pattern, pictured, chosen, { warnings, cuts }) };
}

function reportOf(
  wish: PanelWish,
  pattern: Pattern,
  pictured: readonly PicturePanel[],
  chosen: SharedDecision,
  { warnings, cuts }: { warnings: Warning[]; cuts: readonly CutOff[] },
): PanelReport {
  const artDecided = !wish.paper && wish.art === 'auto';
  const facts = panelFacts(pattern);
  const { mean: meanDifference, worst: worstDifference } = chosen.panels[0];
  return {
    rounds: pattern.shape.rounds,
    stitches: facts[0].stitches,
    beads: facts[0].beads,
    colours: pattern.beads.length,
    mostColours: wish.colours,
    acrossMm: acrossMm(pattern.shape),
    meanDifference,
    worstDifference,
    proofSteps: chosen.proofSteps,
    art: pictured[0].entry.art,
    artDecided,
    panels: facts.map((one, n) => {
      const made = chosen.panels.at(n);
      if (!made) return one;
      const { entry, standing } = pictured[n];
      const { art } = entry;
      const ground = standing.chosen && !standing.chosen.light && wish.beads[standing.chosen.bead];
      return {
        ...one,
        meanDifference: made.mean,
        worstDifference: made.worst,
        art,
        artDecided,
        kept: made.kept,
        cutOff: cuts[n],
        ...(placeOf(wish, n).place === 'subject' && { laid: standing.place }),
        ...(ground && { ground: { id: ground.id, name: ground.name } }),
      };
    }),
    warnings,
    ...(chosen.stock && { stock: chosen.stock }),
  };
}

/** How the picture of a panel was to lie. */
const placeOf = ({ place, backPlace = place }: PanelWish, panel: number) =>
  panel === 0 ? place : backPlace;

function maskWarnings({ mask }: PanelWish, [front]: readonly PicturePanel[]): Warning[] {
  const { mask: masked } = front;
  return mask && masked && saysNothing(masked)
    ? [warning('mask-says-nothing', { name: mask.name })]
    : [];
}

/** Pictures whose ground was to be taken away and could not be told. */
function groundWarnings({ back }: PanelWish, pictured: readonly PicturePanel[]): Warning[] {
  return pictured.flatMap(({ standing, entry }, n) =>
    standing.cut !== false || (n > 0 && back === 'same')
      ? []
      : [warning('ground-not-plain', { file: entry.file })],
  );
}

/** Panels that a maker would hardly know their picture in. */
function keptWarnings(
  { back, colours }: PanelWish,
  pictured: readonly PicturePanel[],
  { panels }: SharedDecision,
): Warning[] {
  return panels.flatMap(({ kept }, n) => {
    const { edges, features, featuresKept } = kept;
    if (edges === undefined) return [];
    const poor = edges < fewEdges || (features >= 4 && featuresKept < fewFeatures * features);
    if (!poor || (n > 0 && back === 'same')) return [];
    const percent = Math.floor(100 * edges);
    const several = pictured.length > 1 && back !== 'same';
    const file = several && { file: pictured[n].entry.file };
    return [warning('hardly-known', { percent, features, featuresKept, colours, ...file })];
  });
}

/** Beads that were to be kept and serve no stitch. */
function unusedWarnings({ keep = [], beads }: PanelWish, used: readonly number[]): Warning[] {
  return keep
    .filter((kept) => !used.includes(kept))
    .map((kept) => warning('kept-bead-unused', { id: beads[kept].id }));
}

/** Share of a stitch that a stroke must be thick to be seen, wherever it crosses the stitch. */
const seenFrom = 0.3;

/** Rounds, by fives, at which strokes so thick would be seen; undefined where no panel has so many. */
function roundsThatShow(rounds: number, stroke: number): number | undefined {
  const needed = 5 * Math.ceil((rounds * seenFrom) / stroke / 5);
  return needed <= shapeLimits.rounds.most ? needed : undefined;
}

/** Whether a picture was lost on its way to the panel. */
function lostWarnings(
  { back, beads: palette, colours, leaveOut = [] }: PanelWish,
  pictured: readonly PicturePanel[],
  beads: readonly PatternBead[],
  panelRounds: number,
): Warning[] {
  const lost = pictured.filter(
    ({ lostLines }, n) => lostLines().share >= thinLinesFrom && !(n > 0 && back === 'same'),
  );
  const told: Warning[] = lost.map(({ lostLines, entry }) => {
    const { share, stroke } = lostLines();
    const percent = Math.round(100 * share);
    const rounds = roundsThatShow(panelRounds, stroke);
    const several = pictured.length > 1 && back !== 'same';
    return warning('thin-lines-lost', {
      percent,
      ...(rounds && { rounds }),
      ...(several && { file: entry.file }),
    });
  });
  pictured.forEach(({ mixed, entry }, n) => {
    if (mixed() < tooFineFrom || (n > 0 && back === 'same')) return;
    const several = pictured.length > 1 && back !== 'same';
    const percent = Math.round(100 * mixed());
    told.push(warning('motif-too-fine', { percent, ...(several && { file: entry.file }) }));
  });
  const [first, second] = beads;
  // Where only one colour can be had, one colour is no surprise.
  const most = Math.min(colours, palette.length - new Set(leaveOut).size);
  if (told.length > 0 || second || most < 2) return told;
  return [warning('one-colour-only', { letter: first.letter, name: first.name })];
}
