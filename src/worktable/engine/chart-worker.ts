import type { PanelWish } from '../../core/make.js';
import { Charting } from '../../core/charting.js';
import { failureOf } from './failure.js';
import type { Answer, Ask } from './messages.js';

const scope = self as unknown as {
  onmessage: (event: MessageEvent<Ask>) => void;
  postMessage(answer: Answer, transfer?: Transferable[]): void;
};

let charting: Charting | undefined;
/** The ask that is worked on; an older one is dropped between two slices. */
let newest = -1;
/** Milliseconds after which a slice looks for a newer wish. */
const sliceMs = 12;
/** Milliseconds after which nothing more seems to be asked for. */
const restMs = 200;

scope.onmessage = ({ data }) => {
  const { number, part, settle, rest } = data;
  newest = number;
  if (rest) return;
  if (charting) charting.change(part);
  else charting = new Charting(part as PanelWish);
  attempt(number, () => {
    follow(number);
    // Asks that arrive meanwhile are taken in first: only the newest is settled.
    if (settle) setTimeout(() => run(number, charting!.settle()));
  });
};

function follow(number: number): void {
  const { panels } = charting!.follow();
  const sent = panels.map(({ geometry, beadOf, place }) => ({
    startDegrees: geometry.startDegrees,
    beadOf: beadOf.slice(),
    place,
  }));
  scope.postMessage(
    { kind: 'followed', number, shape: panels[0].geometry.shape, panels: sent },
    sent.map(({ beadOf }) => beadOf.buffer),
  );
}

/** Goes on in slices, as long as no newer wish has come. */
function run(number: number, steps: ReturnType<Charting['settle']>): void {
  if (number !== newest) return;
  attempt(number, () => {
    const until = performance.now() + sliceMs;
    do {
      const step = steps.next();
      if (!step.done) continue;
      scope.postMessage({ kind: 'settled', number, ...step.value });
      setTimeout(() => ready(number), restMs);
      return;
    } while (performance.now() < until);
    setTimeout(() => run(number, steps));
  });
}

/** What the first move of a finger would wait for is worked out before it. */
function ready(number: number): void {
  if (number === newest) charting!.follow();
}

function attempt(number: number, work: () => void): void {
  try {
    work();
  } catch (error) {
    scope.postMessage({ kind: 'failed', number, error: failureOf(error) });
  }
}
