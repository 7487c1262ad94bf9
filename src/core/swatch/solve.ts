import { RondureError, warning } from '../errors.js';
import type { Warning } from '../errors.js';
import { flatWedges, naturalOutline } from '../panel/shape.js';
import { millionth } from '../units.js';
import { leanOfTurn, markedTurn, rimShare, widestMiddles } from './model.js';
import type { UnitPanel } from './model.js';
import { leastOf, mostOf, requireMeasure } from './plausible.js';
import type { Estimate, Swatch, SwatchMeasured, SwatchWorked } from './swatch.js';

/** What the maker measured on a swatch, as it goes into `solveSwatch`; millimetres and degrees. */
export interface SwatchWish {
  /** As it was worked; the outline follows from increase and lean where it is not given. */
  worked: Omit<SwatchWorked, 'outline'> & { outline?: SwatchWorked['outline'] };
  /** How the swatch lies on the table. */
  lies: Swatch['lies'];
  /** What was measured on it. */
  measured: SwatchMeasured;
  /** What a photograph gave. */
  photo?: { lean: Estimate; roundHeightMm?: Estimate };
}

/** Leans that are tried where none is measured: from stacked to nearly a whole stitch. */
const anyLean: Estimate = { value: 0.5, least: 0, most: 0.75 };
/** A lean is 1 at most; so much more is rounding. */
const mostLean = 1.001;
/** Lies flat within these shares of the flat number (from memory, unchecked). */
const flatShare = { least: 0.92, most: 1.08 };

/**
 * Round height, stitch width, lean, thread and bead length from a swatch: the exact inverse of the
 * panel's model (see `model.ts`). Each lies between the least and the most that the ruler's
 * precision allows, found by solving at the ends of every measurement.
 *
 * A swatch that cups or ruffles gives no height from its width.
 *
 * @throws RondureError `measurement-impossible`, `swatch-measures-nothing`
 */
export function solveSwatch(wish: SwatchWish): { swatch: Swatch; warnings: Warning[] } {
  const { measured, lies } = wish;
  const warnings: Warning[] = [];
  const found = leanAndOutline(wish);
  const { wedges, rounds, increase, ...way } = wish.worked;
  const worked = { wedges, rounds, increase, outline: found.outline, ...way };
  const leans = leansOf(found.lean ?? anyLean);
  const outlines = found.either ? [worked.outline, otherOutline(worked.outline)] : [worked.outline];
  const panels = outlines.flatMap((outline) => leans.map((lean) => ({ ...worked, outline, lean })));
  const fromWidth = heightOfWidth(measured, panels);
  const roundHeightMm = lies === 'flat' ? (wish.photo?.roundHeightMm ?? fromWidth) : undefined;
  if (lies !== 'flat' && (measured.acrossMm !== undefined || wish.photo?.roundHeightMm)) {
    warnings.push(warning('swatch-no-height', { lies }));
  }
  const seen = wish.photo?.roundHeightMm;
  if (seen && fromWidth && (seen.least > fromWidth.most || fromWidth.least > seen.most)) {
    const facts = { widthMm: fromWidth.value, photoMm: seen.value };
    warnings.push(warning('swatch-heights-differ', facts));
  }
  const stitchWidthMm = widthOfRim(measured, panels);
  const flat = roundHeightMm && stitchWidthMm && flatOf(outlines, roundHeightMm, stitchWidthMm);
  if (flat && lies === 'flat') warnings.push(...disagreement(worked.wedges, flat));
  if (found.lean && found.lean.most - found.lean.least > 0.5) {
    warnings.push(warning('swatch-lean-rough', { off: (found.lean.most - found.lean.least) / 2 }));
  }
  if (found.either && found.lean) {
    const { outline, increase } = worked;
    const facts = { outline, other: otherOutline(outline), increase, ...found.lean };
    warnings.push(warning('swatch-outline-unsure', facts));
  }
  const { perStitchMm, beadLengthMm } = threadOf(measured);
  const { lean } = found;
  const results = { roundHeightMm, stitchWidthMm, lean, perStitchMm, beadLengthMm };
  if (Object.values(results).every((one) => one === undefined) && lies === 'flat') {
    throw new RondureError('swatch-measures-nothing', undefined);
  }
  const swatch: Swatch = {
    worked,
    lies,
    measured,
    ...(roundHeightMm && { roundHeightMm }),
    ...(stitchWidthMm && { stitchWidthMm }),
    ...(lean && { lean }),
    ...(flat && { flatWedges: flat }),
    ...(perStitchMm && { perStitchMm }),
    ...(beadLengthMm && { beadLengthMm }),
  };
  return { swatch, warnings };
}

function leansOf({ value, least, most }: Estimate): number[] {
  return [...new Set([value, least, most])];
}

/** The lean, and the outline that goes with it where the maker names none. */
interface LeanAndOutline {
  lean?: Estimate;
  outline: SwatchWorked['outline'];
  /** The lean lies so near to where one outline gives way to the other that it may be either. */
  either?: boolean;
}

function leanAndOutline(wish: SwatchWish): LeanAndOutline {
  const { worked, photo, measured } = wish;
  const natural = (lean: number) => naturalOutline(worked.increase, lean);
  const leanWith = (outline: SwatchWorked['outline']): Estimate | undefined => {
    if (photo) return photo.lean;
    return measured.turnDegrees === undefined
      ? undefined
      : leanOf({ ...worked, outline }, measured);
  };
  if (worked.outline !== undefined) {
    const lean = leanWith(worked.outline);
    return { outline: worked.outline, ...(lean && { lean }) };
  }
  const round = leanWith('circle');
  if (!round) return { outline: natural(anyLean.value) };
  if (worked.increase === 'middle') return { lean: round, outline: 'circle' };
  const cornered = leanWith('polygon')!;
  const outline = natural(round.value);
  const lean = outline === 'circle' ? round : cornered;
  const ends = [round, cornered].flatMap(leansOf);
  if (ends.every((one) => natural(one) === outline)) return { lean, outline };
  return { lean: estimate(lean.value, ends), outline, either: true };
}

const otherOutline = (outline: SwatchWorked['outline']): SwatchWorked['outline'] =>
  outline === 'circle' ? 'polygon' : 'circle';

function leanOf(worked: Omit<UnitPanel, 'lean'>, measured: SwatchMeasured): Estimate {
  const { fromRound = 1, toRound = worked.rounds, markedWedge = 1 } = measured;
  const degrees = measured.turnDegrees!;
  const off = measured.turnOffDegrees ?? 0;
  const solve = (turn: number) => leanOfTurn(worked, markedWedge, fromRound, toRound, turn);
  const turnOf = (lean: number) => markedTurn({ ...worked, lean }, markedWedge, fromRound, toRound);
  if (Math.abs(solve(degrees)) > mostLean) {
    throw new RondureError('turn-impossible', {
      gotDegrees: degrees,
      lean: solve(degrees),
      from: fromRound,
      to: toRound,
      leastDegrees: turnOf(1),
      mostDegrees: turnOf(-1),
      otherWay: Math.abs(solve(-degrees)) <= 1,
    });
  }
  const value = Math.min(1, Math.max(-1, solve(degrees)));
  return estimate(value, [solve(degrees - off), solve(degrees + off)]);
}

function heightOfWidth(measured: SwatchMeasured, panels: readonly UnitPanel[]) {
  const { acrossMm, beadMm, beadOffMm, rulerMm } = measured;
  if (acrossMm === undefined) return undefined;
  const widest = panels.map(widestMiddles);
  const [own] = widest;
  requireMeasure('--across', acrossMm, {
    least: leastOf.stitch * beadMm * own + beadMm,
    most: mostOf.stitch * beadMm * own + beadMm,
    unit: 'mm',
    rounds: panels[0].rounds,
    beadMm,
  });
  const heights = widest.flatMap((one) =>
    [-1, 1].flatMap((ruler) =>
      [-1, 1].map((bead) => (acrossMm + ruler * rulerMm - beadMm - bead * beadOffMm) / one),
    ),
  );
  return estimate((acrossMm - beadMm) / own, heights.map(notBelowZero));
}

function widthOfRim(measured: SwatchMeasured, panels: readonly UnitPanel[]) {
  const { rimStitches, rimMm, rulerMm, beadMm } = measured;
  if (rimStitches === undefined || rimMm === undefined) return undefined;
  const { rounds, wedges } = panels[0];
  const steps = wedges * rounds - 1;
  requireMeasure('--rim-mm', rimMm, {
    least: leastOf.stitch * beadMm,
    most: mostOf.stitch * beadMm * steps,
    unit: 'mm',
    rounds,
    beadMm,
  });
  const most = Math.min(steps, rimMm / (leastOf.stitch * beadMm));
  const least = Math.min(most, rimMm / (mostOf.stitch * beadMm));
  const about = { least, most, unit: 'stitches' as const, rounds, beadMm };
  requireMeasure('--rim-stitches', rimStitches, about);
  // Halves are counted, so that a count is off by a quarter at most.
  const counts = [rimStitches - rimCountedTo, rimStitches + rimCountedTo].map((count) =>
    Math.min(steps, Math.max(rimCountedTo, count)),
  );
  const width = (mm: number, count: number, panel: UnitPanel) =>
    mm / (count * rimShare(panel, count));
  const ends = panels.flatMap((panel) => [
    width(notBelowZero(rimMm - rulerMm), counts[1], panel),
    width(rimMm + rulerMm, counts[0], panel),
  ]);
  return estimate(width(rimMm, rimStitches, panels[0]), ends);
}

function flatOf(
  outlines: readonly SwatchWorked['outline'][],
  height: Estimate,
  width: Estimate,
): Estimate {
  const flat = (outline: SwatchWorked['outline'], roundHeightMm: number, stitchWidthMm: number) =>
    flatWedges({ outline, roundHeightMm, stitchWidthMm });
  return estimate(
    flat(outlines[0], height.value, width.value),
    outlines.flatMap((one) => [
      flat(one, height.least, width.most),
      flat(one, height.most, width.least),
    ]),
  );
}

/** A flat piece with a rim too short or too long for its width. */
function disagreement(wedges: number, flat: Estimate): Warning[] {
  const share = wedges / flat.value;
  const facts = { wedges, flat: flat.value };
  if (share < flatShare.least) return [warning('swatch-rim-short', facts)];
  if (share > flatShare.most) return [warning('swatch-rim-long', facts)];
  return [];
}

function threadOf({ threadMm, threadStitches, fiftyBeadsMm, rulerMm, beadMm }: SwatchMeasured) {
  const found: { perStitchMm?: Estimate; beadLengthMm?: Estimate } = {};
  if (threadMm !== undefined && threadStitches !== undefined) {
    requireMeasure('--thread-mm', threadMm, {
      least: leastOf.threadPerBead * beadMm * threadStitches,
      most: mostOf.threadPerBead * beadMm * threadStitches,
      unit: 'mm',
      stitches: threadStitches,
      beadMm,
    });
    found.perStitchMm = estimate(threadMm / threadStitches, [
      notBelowZero(threadMm - rulerMm) / (threadStitches + countedTo),
      (threadMm + rulerMm) / (threadStitches - countedTo),
    ]);
  }
  if (fiftyBeadsMm !== undefined) {
    requireMeasure('--fifty-beads', fiftyBeadsMm, {
      least: 50 * leastOf.beadLength * beadMm,
      most: 50 * mostOf.beadLength * beadMm,
      unit: 'mm',
      beadMm,
    });
    const [least, most] = [fiftyBeadsMm - rulerMm, fiftyBeadsMm + rulerMm];
    found.beadLengthMm = estimate(fiftyBeadsMm / 50, [least / 50, most / 50]);
  }
  return found;
}

/** Stitches along the rim are counted in halves. */
const rimCountedTo = 0.25;
/** The mark on the thread seldom falls between two stitches. */
const countedTo = 0.5;

const notBelowZero = (mm: number) => Math.max(0, mm);

function estimate(value: number, ends: readonly number[]): Estimate {
  return {
    value: millionth(value),
    least: millionth(Math.min(value, ...ends)),
    most: millionth(Math.max(value, ...ends)),
  };
}
