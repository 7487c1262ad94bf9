import type { Picture } from '../../../core/picture/picture.js';

/** A place on a photo, in shares of its width and height. */
export type Place = readonly [number, number];

/** The first bead of a wedge in a round, as it is pointed at on the photo. */
export interface PointedBead {
  readonly round: number;
  readonly wedge: number;
  /** In shares of the photo's width and height. */
  readonly at: Place;
  /** Whether the maker has pulled it to its place. */
  readonly pulled: boolean;
}

/** A photo of the swatch with the wedge lines that are pulled over it. */
export interface SwatchPhoto {
  readonly name: string;
  readonly picture: Picture;
  readonly rounds: number;
  readonly centre: Place;
  readonly beads: readonly PointedBead[];
  /** Both ends of a ruler that lies beside it, and what lies between them. */
  readonly ruler?: { readonly ends: readonly [Place, Place]; readonly mm: number } | undefined;
}
