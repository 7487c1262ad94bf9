import type { Flow } from './flow.js';
import type { LoweredPages } from './page-flow.js';

/** A page is short under half of its height; what is set ends with a little room below it. */
const leastFill = 0.52;
/** How low pages are made, shares of their height: as little as it takes. */
const heights = [0.94, 0.88, 0.82, 0.76, 0.7, 0.64, 0.58, 0.52];
/** So many pages are made lower, fewer where that is enough. */
const mostPages = 4;

/**
 * Sets what must begin and end on pages of its own. Where a page would be left under half full,
 * those before it are made lower, as few and as little as it takes: they leave to it what it lacks.
 */
export function addLevelled(flow: Flow, set: () => void): void {
  const { top, bottom } = flow.look;
  const first = flow.pages.length;
  const takeBack = flow.saved();
  /** The first short page; Infinity where there is none. */
  const shortPage = (): number => {
    const fills = flow.pages.map(({ reachMm }) => (reachMm - top) / (bottom - top));
    const short = fills.findIndex((fill, n) => n >= first && fill < leastFill);
    return short < 0 ? Infinity : short;
  };
  const setWith = (lowered: readonly LoweredPages[]): number => {
    takeBack();
    flow.lowered = lowered;
    set();
    return shortPage();
  };

  /** What is lowered so that the first short page comes later, if at all. */
  const lowerBefore = (short: number, already: readonly LoweredPages[]) => {
    const pages = flow.pages.length;
    const from = Math.max(first, already.at(-1)?.to ?? 0, short - mostPages);
    for (let begin = short - 1; begin >= from; begin--) {
      // All of them up to the short one, or a single page of them.
      for (const to of new Set([short, begin + 1])) {
        for (const height of heights) {
          const lowered = { from: begin, to, bottom: top + height * (bottom - top) };
          const next = setWith([...already, lowered]);
          if (flow.pages.length > pages) break;
          if (next > short) return { next, lowered: [...already, lowered] };
        }
      }
    }
    return undefined;
  };

  set();
  let lowered: readonly LoweredPages[] = [];
  let short = shortPage();
  while (short < Infinity) {
    const better = lowerBefore(short, lowered);
    if (!better) {
      setWith(lowered);
      break;
    }
    ({ lowered, next: short } = better);
  }
  flow.lowered = [];
}
