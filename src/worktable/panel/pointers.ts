import { look, view } from '../store/store.js';
import type { Pull, PanelHand, Spot } from './hand.js';

/** What the pointers need to know of the panel at the moment. */
export interface Touched {
  spot(xPx: number, yPx: number): Spot;
  hand(): PanelHand | undefined;
  pxPerMm(): number;
  /** Whether the bead face is seen as in a mirror. */
  mirrored(): boolean;
}

/** Mouse, fingers, pen and wheel on the panel's canvas. */
export function watchPointers(canvas: HTMLCanvasElement, touched: Touched): void {
  const down = new Map<number, { x: number; y: number }>();
  let pull: Pull | undefined;
  let wandered = false;
  /** Whether the finger that is down does something besides lighting up a stitch. */
  let pulled = false;
  /** Whether a pen has been taken up. */
  let penned = false;
  /** Touches of the hand that holds a pen. */
  const resting = new Set<number>();
  const kinds = new Map<number, string>();
  const penDown = () => [...down.keys()].some((id) => kinds.get(id) === 'pen');

  const placeOf = (event: MouseEvent) => {
    const box = canvas.getBoundingClientRect();
    return { x: event.clientX - box.left, y: event.clientY - box.top };
  };

  canvas.addEventListener('pointerdown', (event) => {
    const other = event.pointerType === 'pen' && event.button === 5;
    if (event.button !== 0 && !other) return;
    const at = placeOf(event);
    if (event.pointerType === 'pen') {
      // The hand that holds the pen rests on the glass: whatever it began is taken back.
      penned = true;
      pull?.drop();
      pull = undefined;
      for (const id of down.keys()) resting.add(id);
      down.clear();
    } else if (event.pointerType === 'touch' && penDown()) {
      resting.add(event.pointerId);
      return;
    }
    down.set(event.pointerId, at);
    canvas.setPointerCapture(event.pointerId);
    // Two fingers are no tap, however little they move.
    wandered = down.size > 1;
    pulled = false;
    if (down.size > 1) {
      pull?.drop();
      pull = undefined;
      return;
    }
    kinds.set(event.pointerId, event.pointerType);
    // Who has taken up a pen draws with it, and moves the panel with the fingers.
    if (event.pointerType === 'touch' && penned && touched.hand()?.pens) return;
    const kind =
      event.pointerType === 'pen' || event.pointerType === 'touch' ? event.pointerType : 'mouse';
    pull = touched.hand()?.begin(touched.spot(at.x, at.y), { kind, other: other || event.altKey });
    pulled = pull !== undefined;
  });

  /** Whether a move of this frame has been told already. */
  let told = false;
  // Chromium tells of a move before the frame is due: the first one goes on at once, the rest with the frame.
  canvas.addEventListener('pointerrawupdate', (event) => {
    const { pointerId } = event as PointerEvent;
    if (told || !pull || down.size !== 1 || !down.has(pointerId) || !touched.hand()?.soon) return;
    told = true;
    const { x, y } = placeOf(event as PointerEvent);
    pull.move(touched.spot(x, y));
  });

  canvas.addEventListener('pointermove', (event) => {
    told = false;
    if (resting.has(event.pointerId)) return;
    const at = placeOf(event);
    const was = down.get(event.pointerId);
    if (!was) {
      const spot = touched.spot(at.x, at.y);
      canvas.style.cursor = touched.hand()?.cursor?.(spot) ?? 'default';
      return;
    }
    if (Math.hypot(at.x - was.x, at.y - was.y) > 3) wandered = true;
    if (down.size === 2) {
      const [other] = [...down].filter(([id]) => id !== event.pointerId).map(([, place]) => place);
      pinch(was, at, other);
      down.set(event.pointerId, at);
      return;
    }
    if (pull) {
      for (const one of between(event)) {
        const { x, y } = placeOf(one);
        pull.move(touched.spot(x, y));
      }
    } else if (wandered && view.peek().zoom > 1) {
      const { panXmm, panYmm } = view.peek();
      const k = touched.pxPerMm();
      look({ panXmm: panXmm - (at.x - was.x) / k, panYmm: panYmm - (at.y - was.y) / k });
      down.set(event.pointerId, at);
    }
  });

  function pinch(was: Place, now: Place, still: Place): void {
    const before = { x: was.x - still.x, y: was.y - still.y };
    const after = { x: now.x - still.x, y: now.y - still.y };
    const factor = Math.hypot(after.x, after.y) / Math.max(1, Math.hypot(before.x, before.y));
    const turned = Math.atan2(after.y, after.x) - Math.atan2(before.y, before.x);
    const degrees = (((turned * 180) / Math.PI + 540) % 360) - 180;
    const middle = { x: (now.x + still.x) / 2, y: (now.y + still.y) / 2 };
    resize({ factor, degrees, about: touched.spot(middle.x, middle.y) }, middle, {
      x: (now.x - was.x) / 2,
      y: (now.y - was.y) / 2,
    });
  }

  /** Two fingers that are moved together move what they hold. */
  function resize(
    by: { factor: number; degrees: number; about: Spot },
    at: Place,
    moved: Place,
  ): void {
    const hand = touched.hand();
    if (hand?.pinch) {
      hand.pinch(touched.mirrored() ? { ...by, degrees: -by.degrees } : by);
      return;
    }
    const was = view.peek();
    const zoom = Math.min(8, Math.max(1, was.zoom * by.factor));
    if (zoom === 1) return look({ zoom, panXmm: 0, panYmm: 0 });
    // What lies under the fingers stays there.
    const k = touched.pxPerMm();
    const { clientWidth, clientHeight } = canvas;
    const share = 1 - was.zoom / zoom;
    look({
      zoom,
      panXmm: was.panXmm + ((at.x - clientWidth / 2) * share - moved.x) / k,
      panYmm: was.panYmm + ((at.y - clientHeight / 2) * share - moved.y) / k,
    });
  }

  const lift = (event: PointerEvent) => {
    if (resting.delete(event.pointerId)) return;
    const was = down.get(event.pointerId);
    down.delete(event.pointerId);
    pull?.end();
    pull = undefined;
    if (!was || wandered || down.size > 0 || (pulled && touched.hand()?.quiet)) return;
    const { stitch } = touched.spot(was.x, was.y);
    look({ litStitch: view.peek().litStitch === stitch ? -1 : stitch });
  };
  canvas.addEventListener('pointerup', lift);
  canvas.addEventListener('pointercancel', (event) => {
    resting.delete(event.pointerId);
    down.delete(event.pointerId);
    pull?.drop();
    pull = undefined;
  });

  canvas.addEventListener(
    'wheel',
    (event) => {
      event.preventDefault();
      const at = placeOf(event);
      const factor = Math.exp(-event.deltaY * (event.deltaMode === 1 ? 0.03 : 0.0015));
      resize({ factor, degrees: 0, about: touched.spot(at.x, at.y) }, at, { x: 0, y: 0 });
    },
    { passive: false },
  );
}

type Place = { x: number; y: number };

/** Where the pointer has been since the last event, and where it is. */
function between(event: PointerEvent): readonly PointerEvent[] {
  const passed = event.getCoalescedEvents?.() ?? [];
  return passed.length > 0 ? passed : [event];
}
