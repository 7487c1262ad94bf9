import type { PlaceWish } from '../../../core/picture/sampling/place.js';
import type { Gesture } from '../../store/history.js';
import type { Piece } from '../../store/piece.js';
import { pieces, view } from '../../store/store.js';

/** Whether the picture of the back is laid: it is looked at, and has one. */
export const laysBack = ({ wish }: Piece): boolean =>
  view.value.panel === 1 && (wish.back === 'same' || wish.back === 'own');

/** How the picture lies of the panel that is looked at. */
export const placeOf = (now: Piece): PlaceWish =>
  (laysBack(now) ? now.wish.backPlace : undefined) ?? now.wish.place;

/** The piece with the picture of that panel laid otherwise. */
export function placed(now: Piece, part: Partial<PlaceWish>): Piece {
  const place = { ...placeOf(now), ...part };
  return { ...now, wish: { ...now.wish, ...(laysBack(now) ? { backPlace: place } : { place }) } };
}

export const limits = { zoom: { least: 0.05, most: 20 }, shiftMm: 200 } as const;

const within = (value: number, least: number, most: number) =>
  Math.min(most, Math.max(least, value));

/** Moves the picture, millimetres; the same piece where it does not move. */
export function shifted(now: Piece, byXmm: number, byYmm: number): Piece {
  const { shiftXmm = 0, shiftYmm = 0 } = placeOf(now);
  const far = limits.shiftMm;
  const to = {
    shiftXmm: tenth(within(shiftXmm + byXmm, -far, far)),
    shiftYmm: tenth(within(shiftYmm + byYmm, -far, far)),
  };
  return to.shiftXmm === shiftXmm && to.shiftYmm === shiftYmm ? now : placed(now, to);
}

/** Sizes and turns the picture about a place that stays where it is. */
export function sized(
  now: Piece,
  factor: number,
  degrees: number,
  xMm: number,
  yMm: number,
): Piece {
  const { zoom = 1, shiftXmm = 0, shiftYmm = 0, rotateDegrees = 0 } = placeOf(now);
  const to = within(zoom * factor, limits.zoom.least, limits.zoom.most);
  const by = to / zoom;
  const turn = (degrees * Math.PI) / 180;
  const dx = (shiftXmm - xMm) * by;
  const dy = (shiftYmm - yMm) * by;
  return placed(now, {
    zoom: Math.round(to * 1000) / 1000,
    rotateDegrees: turned(rotateDegrees + degrees),
    shiftXmm: tenth(xMm + dx * Math.cos(turn) - dy * Math.sin(turn)),
    shiftYmm: tenth(yMm + dx * Math.sin(turn) + dy * Math.cos(turn)),
  });
}

/** Degrees from -180 to 180, to a tenth. */
export function turned(degrees: number): number {
  return tenth(((((degrees + 180) % 360) + 360) % 360) - 180);
}

const tenth = (value: number) => Math.round(value * 10) / 10;

let wheel: { gesture: Gesture<Piece>; timer: number } | undefined;

/** Turns of the wheel that follow one another are one step. */
export function wheeled(name: string, recipe: (now: Piece) => Piece): void {
  if (wheel) clearTimeout(wheel.timer);
  const gesture = wheel?.gesture ?? pieces.begin(name);
  gesture.change(recipe);
  const timer = window.setTimeout(() => {
    gesture.end();
    wheel = undefined;
  }, 350);
  wheel = { gesture, timer };
}
