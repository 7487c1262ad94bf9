import type { PatternBead } from '../beads/bead.js';
import type { Shape } from '../panel/shape.js';

/** Every field may be absent. */
type Asked<T> = { [K in keyof T]?: T[K] | undefined };

/** How a panel was asked for, before anything followed from it; what is absent has its default. */
export interface WishedShape extends Asked<Omit<Shape, 'wedges'>> {
  /** Wedges N: a whole number, 3 to 12. */
  wedges: number;
  /** Wished size across, where rounds were not asked for, millimetres: above 0. */
  acrossMm?: number | undefined;
  /** Of the palette: gives the stitch that is not asked for; millimetres, above 0, at most 50. */
  beadDiameterMm: number;
  /** Face angle of the start mark, degrees clockwise from 12 o'clock. */
  startDegrees?: number | undefined;
}

/** How a picture was asked to lie; see `PlaceWish`. */
export interface WishedPlace {
  /** What decides how large the picture lies. */
  place: 'subject' | 'fit' | 'fill' | 'inside';
  /** Above 0; 1 when absent. */
  zoom?: number | undefined;
  /** To the right, millimetres. */
  shiftXmm?: number | undefined;
  /** Down, millimetres. */
  shiftYmm?: number | undefined;
  /** Clockwise on the bead face. */
  rotateDegrees?: number | undefined;
  /** Left and right changed over, before rotating. */
  mirror?: boolean | undefined;
  /** One picture in every wedge. */
  repeat?: boolean | undefined;
}

/** A painted picture, kept small: enough to go on from. */
export interface Painted {
  /** Name of the file, 1 to 1000 characters. */
  file: string;
  /** PNG of at most 512 pixels a side, base64. */
  thumbnail: string;
}

/** Stitches of one round that got one bead by hand. */
export interface LaidStitches {
  /** Id of the bead, or `.` for none. */
  bead: string;
  /** From 1. */
  round: number;
  /** In working order, from 1. */
  stitches: number[];
}

/** Beads laid by hand: they stand where they stood, whatever is chosen around them. */
export interface HandLaid {
  /** Of the panel on which they were laid: a whole number, 3 to 12. */
  wedges: number;
  /** The beads themselves, so that another palette does not lose them; at most 24. */
  beads: Omit<PatternBead, 'letter'>[];
  /** On the front panel. */
  front?: LaidStitches[] | undefined;
  /** On the back panel. */
  back?: LaidStitches[] | undefined;
}

/** Every choice of the maker that is not derived; lengths in millimetres, beads by their ids in the palette. */
export interface MakerWish {
  /** Most bead colours: a whole number, 1 to 24. */
  colours: number;
  /** How the panel is worked. */
  shape: WishedShape;
  /** Where the picture lies. */
  place: WishedPlace;
  /** Of the second picture, where it lies otherwise. */
  backPlace?: WishedPlace | undefined;
  /** How the picture is taken. */
  art: 'auto' | 'photo' | 'drawing';
  /** The picture shows a drawing on paper. */
  paper?: boolean | undefined;
  /** Of a stitch that dark must cover to win it, per cent: 0 to 100. */
  inkPercent?: number | undefined;
  /** What stitches where the picture changes count more, 0 to 1. */
  detail?: number | undefined;
  /** What contrast between neighbours counts, 0 to 1. */
  edges?: number | undefined;
  /** How far a picture of little contrast is stretched, 0 to 1. */
  lift?: number | undefined;
  /** What matters most. */
  mask?: Painted | undefined;
  /** What of the picture was cut out. */
  subject?: 'plain' | Painted | undefined;
  /** The second panel: the same picture, one bead, or the picture of a file. */
  back?: 'same' | { plain: string } | { file: string } | undefined;
  /** Outside the picture: `auto`, `bare`, #rrggbb, or a bead. */
  background: string | { bead: string };
  /** Beads that are used in any case. */
  keep?: string[] | undefined;
  /** Beads that are not used. */
  leaveOut?: string[] | undefined;
  /** How hard a proof is tried that no other beads are nearer. */
  proof?: 'off' | 'normal' | 'long' | undefined;
  /** Only what is in the jars. */
  useStock?: boolean | undefined;
  /** What tidying may cost, per cent of the objective: 0 to 100. */
  tidy?: number | undefined;
  /** How much of its error a stitch hands on, 0 to 1. */
  dither?: number | undefined;
  /** Asked for under the frame: a whole number, 0 to 80. */
  bareRounds?: number | undefined;
  /** Beads laid wherever others were chosen, by the ids of those. */
  instead?: Record<string, string> | undefined;
  /** Beads laid by hand over all that was chosen. */
  laid?: HandLaid | undefined;
}
