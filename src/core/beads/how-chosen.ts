/** How the beads were assigned so that neighbours that differ stay different. */
export interface EdgesKept {
  /** What contrast counts against the difference of a stitch, 0 to 1. */
  strength: number;
  /**
   * Mean over the beaded stitches of CIEDE2000 and of `strength` times the contrast lost or made up
   * between touching stitches, as chosen: 0 or more.
   */
  before: number;
  /** The same when the beads were assigned anew. */
  after: number;
  /** No assignment of these beads has a smaller mean; absent where stock limits it. */
  lowerBound?: number | undefined;
}

/** How the beads were tidied after the choice. */
export interface Tidied {
  /** What tidying was allowed to cost, per cent of the objective: 0 or more. */
  percent: number;
  /** What it cost, per cent. */
  costPercent: number;
  /** Colour changes along the thread. */
  changesBefore: number;
  /** The same after tidying. */
  changesAfter: number;
  /** Stitches none of whose neighbours has their bead. */
  straysBefore: number;
  /** The same after tidying. */
  straysAfter: number;
}

/** How good the choice of beads is, and how far it could be from the best. */
export interface Choice {
  /** Mean CIEDE2000 over the beaded stitches, weighted as chosen, before any tidying: 0 or more. */
  objective: number;
  /** No choice under the same rules is below this. */
  lowerBound?: number | undefined;
  /** (objective - lowerBound) / objective. */
  gap?: number | undefined;
  /** Whether the gap is at most 1e-6. */
  proven?: boolean | undefined;
  /** How it was found, in words of the program: 1 to 200 characters. */
  method: string;
  /** How much neighbours counted, where they did. */
  edges?: EdgesKept | undefined;
  /** What tidying did, where it was asked for. */
  tidy?: Tidied | undefined;
  /** How much of its error a stitch hands on, 0 to 1. */
  dither?: { strength: number } | undefined;
}
