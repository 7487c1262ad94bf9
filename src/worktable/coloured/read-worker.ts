import { undecided } from '../../core/beads/bead.js';
import { RondureError } from '../../core/errors.js';
import { cellPatch } from '../../core/blank/cell-patch.js';
import { likelyBeads } from '../../core/blank/likely-beads.js';
import { reported } from '../../core/blank/read-blank.js';
import { readCells } from '../../core/blank/read-cells.js';
import type { CellReading } from '../../core/blank/read-cells.js';
import type { ReadingWish } from '../../core/blank/reading-wish.js';
import { placeInWedge } from '../../core/pages/lists/doubtful.js';
import type { Picture } from '../../core/picture/picture.js';
import { failureOf } from '../engine/failure.js';
import type { Doubtful, PageRead, ReadAnswer, ReadAsk } from './messages.js';

// A coloured page is read in a thread of its own, which then keeps the photo to show cells of it.

const scope = self as unknown as {
  onmessage: (event: MessageEvent<ReadAsk>) => void;
  postMessage(answer: ReadAnswer, transfer?: Transferable[]): void;
};

let shown: { picture: Picture; reading: CellReading } | undefined;

scope.onmessage = ({ data }) => {
  try {
    if (data.what === 'read') scope.postMessage({ what: 'read', read: pageRead(data) });
    else if (shown) {
      const patch = cellPatch(shown.picture, shown.reading, data.stitch, data.sidePx);
      const answer = { what: 'patch', stitch: data.stitch, patch } as const;
      scope.postMessage(answer, [patch.picture.data.buffer as ArrayBuffer]);
    }
  } catch (error) {
    scope.postMessage({ what: 'failed', error: failureOf(error) });
  }
};

/** So large a share of doubtful cells speaks of another chart than the one that was coloured. */
const manyDoubtful = 0.25;

/**
 * Reads the page as the first of the blanks whose marks and cells it fits, else as the one that it fits best.
 *
 * @throws RondureError `corner-marks-not-found`, `blank-not-coloured`: as the first blank says
 */
function pageRead(ask: Extract<ReadAsk, { what: 'read' }>): PageRead {
  const { picture, name: pictureName, blanks, beads, colours } = ask;
  let best: { wish: ReadingWish; reading: CellReading; blank: number; share: number } | undefined;
  let refused: unknown;
  for (const [n, blank] of blanks.entries()) {
    const { title } = blank;
    const wish = { picture, pictureName, blank, title, beads, colours, unpainted: undecided };
    try {
      const reading = readCells(wish);
      const doubts = reading.judged.filter(({ doubt }) => doubt !== undefined);
      const share = doubts.length / reading.judged.length;
      if (!best || share < best.share) best = { wish, reading, blank: n, share };
      if (share <= manyDoubtful) break;
    } catch (error) {
      if (!(error instanceof RondureError)) throw error;
      refused ??= error;
    }
  }
  if (!best) throw refused;
  const { wish, reading, blank, share } = best;
  shown = { picture, reading };
  const { report } = reported(wish, reading);
  const { cells, groups, judged } = reading;
  const { wedges } = wish.blank.shape;
  const doubtful = report.doubts.map(({ round, stitch: i, reason }): Doubtful => {
    const stitch = (wedges * round * (round - 1)) / 2 + i - 1;
    const { bead: read } = judged[stitch];
    const likely = likelyBeads(cells[stitch], groups, judged[stitch]);
    return { stitch, round, ...placeInWedge(round, i), reason, read, likely };
  });
  return {
    blank,
    beadOf: Int16Array.from(judged, ({ bead }) => bead),
    found: report.groups.map(({ id }) => beads.findIndex((bead) => bead.id === id)),
    doubtful,
    unlikely: share > manyDoubtful,
    report,
  };
}
