import { sideGapMm } from './flow.js';
import type { Flow } from './flow.js';
import type { Block } from './flow-page.js';

/** Between blocks one below the other. */
const blockGapMm = 3;
/** Drawings beside words may reach so far below them. */
const mostOverhangMm = 14;

/**
 * Words on the left and blocks beside them on the right, in order, as far as they find room there.
 *
 * @returns the blocks that found none
 */
export function addBeside(flow: Flow, blocks: readonly Block[], set: () => void): Block[] {
  const { look } = flow;
  const from = flow.pages.length - 1;
  const begin = flow.y;
  const wide = Math.max(...blocks.map(({ widthMm }) => widthMm));
  flow.inColumn({ keptMm: wide + sideGapMm }, set);
  const last = flow.pages.length - 1;
  let page = from;
  let top = begin;
  let placed = 0;
  const textEnd = flow.y;
  let low = textEnd;
  while (placed < blocks.length && page <= last) {
    const block = blocks[placed];
    const end = page < last ? look.bottom : Math.min(look.bottom, textEnd + mostOverhangMm);
    if (top + block.heightMm > end + 1e-6) {
      page++;
      top = flow.pages[page]?.topMm ?? 0;
      continue;
    }
    block.put(flow.pages[page], look.right - wide, top);
    flow.pages[page].reachMm = Math.max(flow.pages[page].reachMm, top + block.heightMm);
    top += block.heightMm + blockGapMm;
    if (page === last) low = Math.max(low, top);
    placed++;
  }
  flow.y = low;
  return blocks.slice(placed);
}

/**
 * Two parts side by side where both fit on the page, else one below the other.
 *
 * @param heightsMm of each, set half as wide as the page
 */
export function addSideBySide(
  flow: Flow,
  heightsMm: readonly [number, number],
  sets: readonly [() => void, () => void],
): void {
  const { left, right } = flow.look;
  const half = (right - left + sideGapMm) / 2;
  if (!flow.hangs || !flow.fits(Math.max(...heightsMm))) {
    for (const set of sets) set();
    return;
  }
  const top = flow.y;
  flow.inColumn({ keptMm: half }, sets[0]);
  const end = flow.y;
  flow.y = top;
  flow.inColumn({ shiftMm: half }, sets[1]);
  flow.y = Math.max(end, flow.y);
}

/** Blocks in rows over the whole width, each row with as many as it holds. */
export function addRows(flow: Flow, blocks: readonly Block[], gapMm = 5): void {
  const { look } = flow;
  let row: Block[] = [];
  let used = 0;
  const end = () => {
    const over = Math.max(0, ...row.map(({ overMm }) => overMm));
    const high = over + Math.max(0, ...row.map(({ heightMm, overMm }) => heightMm - overMm));
    if (!flow.fits(high)) flow.next();
    let { left } = look;
    for (const block of row) {
      block.put(flow.pages.at(-1)!, left, flow.y + over - block.overMm);
      left += block.widthMm + gapMm;
    }
    if (row.length > 0) flow.y += high + blockGapMm;
  };
  const wideFrom = (n: number) => {
    const { group } = blocks[n];
    if (blocks[n - 1]?.group === group) return blocks[n].widthMm;
    const own = blocks.filter((one) => one.group === group);
    const wide = own.reduce((sum, { widthMm }) => sum + widthMm + gapMm, -gapMm);
    return wide > flow.wide + 1e-6 ? blocks[n].widthMm : wide;
  };
  for (const [n, block] of blocks.entries()) {
    if (row.length > 0 && used + wideFrom(n) > flow.wide + 1e-6) {
      end();
      [row, used] = [[], 0];
    }
    row.push(block);
    used += block.widthMm + gapMm;
  }
  end();
}
