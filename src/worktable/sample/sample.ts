import { defaultEdges } from '../../core/beads/edges/keep-edges.js';
import { readPalette } from '../../core/beads/palette/read-palette.js';
import { usualDarkCover } from '../../core/picture/sampling/drawing.js';
import { defaultDetail } from '../../core/picture/importance/stitch-importance.js';
import { defaultLift } from '../../core/picture/tone/lift.js';
import type { Piece, PiecePalette, PieceWish } from '../store/piece.js';
import drawers from '../../../palettes/drawers.csv?raw';
import kingfisher from './kingfisher.png?url';

/** Our mixed palette, until the maker has laid out their own beads. */
export function ourPalette(): PiecePalette {
  const { beads, diameterMm } = readPalette(drawers, 'drawers.csv');
  return { name: 'drawers.csv', beads, diameterMm };
}

/** What holds where nothing is said: the same as on the command line. */
export const plainWish: PieceWish = {
  shape: {
    wedges: 7,
    rounds: 20,
    increase: 'last',
    lean: 0.5,
    construction: 'spiral',
    hand: 'right',
    beadsFace: 'away',
  },
  place: {
    place: 'subject',
    zoom: 1,
    shiftXmm: 0,
    shiftYmm: 0,
    rotateDegrees: 0,
    mirror: false,
    repeat: false,
  },
  art: 'auto',
  paper: false,
  darkCover: usualDarkCover,
  detail: defaultDetail,
  edges: defaultEdges,
  lift: defaultLift,
  cutOut: false,
  background: 'auto',
  colours: 8,
  keep: [],
  leaveOut: [],
  instead: {},
  useStock: false,
  tidy: 2,
};

/** The finished panel that lies on the table when it is opened for the first time. */
export function samplePiece(): Piece {
  return {
    title: 'Kingfisher',
    sample: true,
    palette: ourPalette(),
    wish: { ...plainWish, shape: { ...plainWish.shape, rounds: 22 }, colours: 9 },
    laid: {},
  };
}

/** The sample's picture as a file. */
export async function samplePicture(): Promise<File> {
  const answer = await fetch(kingfisher);
  return new File([await answer.blob()], 'kingfisher.png', { type: 'image/png' });
}
