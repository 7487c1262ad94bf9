import type { BeadOfStitch } from './beads/bead.js';
import { bare } from './beads/bead.js';
import { makeDecision } from './beads/decide-beads.js';
import type { ColouredPanel, SharedDecision } from './beads/decide-beads.js';
import type { PanelReport } from './made.js';
import { bareRoundsOf, bareUnderFrame, frameWarnings } from './purse/frame/plan.js';
import { layPanel } from './panel/lay.js';
import { backStartDegrees, pairStartDegrees } from './panel/meet.js';
import type { PanelGeometry } from './panel/geometry.js';
import { directionOf } from './panel/shape.js';
import type { Shape } from './panel/shape.js';
import { defaultStartDegrees } from './panel/turn.js';
import { makePicturePanel } from './picture/picture-panel.js';
import type { Frame } from './purse/frame/measures.js';
import type { Place } from './picture/sampling/place.js';
import type { Pattern } from './pattern/pattern.js';
import { patternOf } from './pattern-of.js';
import type { PanelsUnderWork } from './pattern-of.js';
import { remembered } from './remember.js';
import { shapeFor } from './shape-for.js';
import type { Steps } from './steps.js';
import type { BackWish, PanelWish } from './wish.js';

/** A panel of `Charting.follow`. */
export interface FollowedPanel {
  /** Where its stitches lie. */
  readonly geometry: PanelGeometry;
  /** Palette index of each stitch in working order, or `bare`; length count. */
  readonly beadOf: BeadOfStitch;
  /** How its picture lies; absent for a panel of one bead. */
  readonly place?: Place;
}

/** What `Charting.follow` gives: enough to paint at once, too little to write to a file. */
export interface Followed {
  /** The front, and the back where there is one. */
  readonly panels: readonly FollowedPanel[];
  /** Palette indices that may be used, ascending. */
  readonly open: readonly number[];
  /** Weighted mean CIEDE2000 of a stitch of the picture and its bead. */
  readonly objective: number;
}

/**
 * One panel or two under work. It keeps what a change does not touch: moving the picture does not
 * lay the panel out again, another number of colours does not sample it again. What it makes of a
 * wish never depends on the wishes before it: `settle` gives the same bytes as `makePattern`.
 *
 * Nothing that is handed to it, pixels and lists alike, may be changed afterwards; hand over another.
 */
export class Charting {
  #wish: PanelWish;
  readonly #shape = remembered(shapeFor);
  readonly #lays = [remembered(layPanel), remembered(layPanel)];
  readonly #pictures = [makePicturePanel(), makePicturePanel()];
  readonly #plain = remembered(plainPanel);
  readonly #frameNotes = remembered(frameWarnings);
  readonly #decision = makeDecision();

  /** Nothing is worked out before it is asked for. */
  constructor(wish: PanelWish) {
    this.#wish = wish;
  }

  /** What is wished now. */
  get wish(): PanelWish {
    return this.#wish;
  }

  /**
   * Changes a part of the wish. A key whose value is undefined takes that part away, as for instance
   * `{ back: undefined }`.
   */
  change(part: { [K in keyof PanelWish]?: PanelWish[K] | undefined }): void {
    const all = Object.entries({ ...this.#wish, ...part });
    this.#wish = Object.fromEntries(all.filter(([, value]) => value !== undefined)) as never;
  }

  /**
   * A good chart at once: exact colours, and beads that follow those chosen last. It is not proven,
   * not tidied or dithered and knows no stock, so it is never written to a file.
   *
   * @throws RondureError as `makePattern`
   */
  follow(): Followed {
    const { lays, pictured, plain } = this.#panels();
    const panels = pictured.map((one) => one.followed());
    const { beadOf, open, objective } = this.#decision.follow(this.#wish, panels, plain);
    const all = plain ? [...beadOf, plain.beadOf] : beadOf;
    return {
      panels: lays.map(({ geometry }, n) => ({
        geometry,
        beadOf: all[n],
        ...(pictured[n] && { place: pictured[n].entry.place }),
      })),
      open,
      objective,
    };
  }

  /**
   * The chart that `makePattern` gives, in steps of some milliseconds. It may be dropped half-way,
   * for instance because the wish has changed: then it is asked for again. The wish is that of the
   * first step.
   *
   * @throws RondureError as `makePattern`
   */
  *settle(): Steps<{ pattern: Pattern; report: PanelReport }> {
    const wish = this.#wish;
    yield { stage: 'panel' };
    const under = this.#panels(wish);
    yield { stage: 'beads' };
    const panels: ColouredPanel[] = [];
    for (const one of under.pictured) panels.push(yield* one.settled());
    const chosen: SharedDecision = yield* this.#decision.steps(wish, panels, under.plain);
    yield { stage: 'pattern' };
    return yield* patternOf(wish, under, chosen);
  }

  #panels(wish = this.#wish): PanelsUnderWork {
    const shape = this.#shape(wish.shape, wish.acrossMm, wish.frame, wish.startDegrees);
    const starts = startsFor(wish, shape);
    const frame = wish.frame && { ...wish.frame, bareRounds: bareRoundsOf(wish.frame, shape) };
    const framed = { ...wish, ...(frame && { frame }) };
    const { back } = wish;
    const first = this.#lays[0](shape, { startDegrees: starts.front });
    const frameNotes = frame ? this.#frameNotes(frame, first.geometry) : [];
    const front = this.#pictures[0](framed, first, wish);
    const common = { shape, frame, frameNotes };
    if (back === undefined) {
      return { ...common, lays: [first], pictured: [front], plain: undefined };
    }
    const alikeBoth = starts.front === starts.back;
    const samePlace = wish.backPlace === undefined;
    const behind = { ...framed, place: wish.backPlace ?? framed.place };
    const second = alikeBoth ? first : this.#lays[1](shape, { startDegrees: starts.back });
    const lays = [first, second];
    if (back === 'same' && alikeBoth && samePlace) {
      return { ...common, lays, pictured: [front, front], plain: undefined };
    }
    if (back !== 'same' && 'plain' in back) {
      const plain = this.#plain(back.plain, second.geometry, frame);
      return { ...common, lays, pictured: [front], plain };
    }
    // A mask and a painted subject belong to the front's picture.
    const pictured = [front, this.#pictures[1](behind, second, sourceOf(wish, back))];
    return { ...common, lays, pictured, plain: undefined };
  }
}

/** The picture of the back: the front's again, or one of its own. */
function sourceOf(wish: PanelWish, back: Exclude<BackWish, { plain: number }>) {
  if (back === 'same') return wish;
  return { ...back, ...(wish.subject === 'plain' && { subject: wish.subject }) };
}

/** Where round 1 of each panel begins; two panels meet rim on rim. */
function startsFor({ back, startDegrees }: PanelWish, shape: Shape) {
  const usual =
    back === undefined ? defaultStartDegrees(shape, directionOf(shape)) : pairStartDegrees(shape);
  const front = startDegrees ?? usual;
  return { front, back: backStartDegrees(shape, front) };
}

/** A panel of one bead all over. */
function plainPanel(bead: number, geometry: PanelGeometry, frame: Frame | undefined) {
  const underFrame = frame && bareUnderFrame(frame, geometry);
  const beadOf = new Int16Array(geometry.count).fill(bead);
  underFrame?.forEach((one, s) => (beadOf[s] = one ? bare : beadOf[s]));
  const stitches = beadOf.reduce((sum, one) => sum + (one === bare ? 0 : 1), 0);
  return { bead, stitches, beadOf };
}
