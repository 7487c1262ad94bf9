import { sideGapMm } from './flow.js';
import type { Flow } from './flow.js';
import type { Block } from './flow-page.js';

/** Between blocks one below the other. */
const blockGapMm = 3;
/** Between blocks of a row. */
const rowGapMm = 5;
/** The end of a page, and what begins on the next rather than there, shares of its height. */
const endShare = 0.2;
const endMostShare = 0.8;
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
    const end = page < last ? look.bottom : Math.min(flow.bottom, textEnd + mostOverhangMm);
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
  const { look } = flow;
  const { left, right } = look;
  const half = (right - left + sideGapMm) / 2;
  const high = Math.max(...heightsMm);
  // Where little is left of a page they begin on the next, rather than go on on it one by one.
  const roomMm = flow.bottom - flow.y;
  const isEnd = roomMm < endShare * (look.bottom - look.top);
  const fitsNext = high <= endMostShare * (look.bottom - look.top);
  if (!flow.hangs || (!flow.fits(high) && !(isEnd && fitsNext))) {
    for (const set of sets) set();
    return;
  }
  if (!flow.fits(high)) flow.next();
  const top = flow.y;
  flow.inColumn({ keptMm: half }, sets[0]);
  const end = flow.y;
  flow.y = top;
  flow.inColumn({ shiftMm: half }, sets[1]);
  flow.y = Math.max(end, flow.y);
}

/** How groups that take more than a row begin: at the left of one, or in what is left of one. */
type Begin = 'left' | 'anywhere';

/** Blocks in rows over the whole width, each row with as many as it holds. */
export function addRows(flow: Flow, blocks: readonly Block[], begin: Begin = 'left'): void {
  for (const row of rowsOf(flow, blocks, begin)) {
    const { over, high } = measured(row);
    if (!flow.fits(high)) flow.next();
    let { left } = flow.look;
    for (const block of row) {
      block.put(flow.pages.at(-1)!, left, flow.y + over - block.overMm);
      left += block.widthMm + rowGapMm;
    }
    flow.y += high + blockGapMm;
  }
}

/** Shares of their own size in which drawings are still read with ease. */
const sizes = [1, 0.94, 0.88];

/**
 * The same in the largest of some sizes that has room for all rows on this page, so that none is
 * left alone on another; in full size where none has.
 */
export function addRowsTogether(flow: Flow, blocksIn: (share: number) => readonly Block[]): void {
  const begins = ['left', 'anywhere'] as const;
  const ways = begins.flatMap((begin) => sizes.map((share) => ({ begin, share })));
  const way = ways.find(({ begin, share }) => {
    const highs = rowsOf(flow, blocksIn(share), begin).map((row) => measured(row).high);
    return flow.fits(highs.reduce((sum, high) => sum + high + blockGapMm, -blockGapMm));
  });
  addRows(flow, blocksIn(way?.share ?? 1), way?.begin ?? 'anywhere');
}

/** What stands above the line on which the blocks of a row begin, and how high the row is. */
function measured(row: readonly Block[]): { over: number; high: number } {
  const over = Math.max(0, ...row.map(({ overMm }) => overMm));
  const high = over + Math.max(0, ...row.map(({ heightMm, overMm }) => heightMm - overMm));
  return { over, high };
}

/**
 * Blocks of a group stand in a row together. A group wider than a row begins at the left of one; where
 * it may begin anywhere, its question stands again over the row on which it goes on.
 */
function rowsOf(flow: Flow, blocks: readonly Block[], begin: Begin): Block[][] {
  const rows: Block[][] = [];
  let used = Infinity;
  const wideFrom = (n: number) => {
    const { group } = blocks[n];
    if (blocks[n - 1]?.group === group) return blocks[n].widthMm;
    const own = blocks.filter((one) => one.group === group);
    const wide = own.reduce((sum, { widthMm }) => sum + widthMm + rowGapMm, -rowGapMm);
    return wide > flow.wide + 1e-6 && begin === 'anywhere' ? blocks[n].widthMm : wide;
  };
  for (const [n, block] of blocks.entries()) {
    let shown = block;
    if (used + wideFrom(n) > flow.wide + 1e-6) {
      const over = rows.at(-1);
      const goesOn = over?.at(-1)?.group === block.group && over[0].group !== block.group;
      if (goesOn) shown = block.again?.() ?? block;
      rows.push([]);
      used = 0;
    }
    rows[rows.length - 1].push(shown);
    used += block.widthMm + rowGapMm;
  }
  return rows.map((row) => headsOver(spread(row, flow.wide), flow.wide));
}

/** A row that does not fill the width gives what is left to the words of its blocks. */
function spread(row: readonly Block[], wideMm: number): readonly Block[] {
  const used = row.reduce((sum, { widthMm }) => sum + widthMm + rowGapMm, -rowGapMm);
  const more = (wideMm - used) / row.length;
  return more < 1 ? row : row.map((block) => block.wider?.(block.widthMm + more) ?? block);
}

/** A row whose heads reach as far as the next one, or to the end of the row. */
function headsOver(row: readonly Block[], wideMm: number): Block[] {
  let room = wideMm + rowGapMm;
  const lefts = row.map(({ widthMm }) => {
    const left = wideMm + rowGapMm - room;
    room -= widthMm + rowGapMm;
    return left;
  });
  return row.map((block, n) => {
    const next = row.findIndex((one, m) => m > n && one.withHead !== undefined);
    const end = next < 0 ? wideMm : lefts[next] - rowGapMm;
    return block.withHead?.(end - lefts[n]) ?? block;
  });
}
