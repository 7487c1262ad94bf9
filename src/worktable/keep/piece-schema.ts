import * as z from 'zod';
import { workSchema } from '../../core/work/work-schema.js';
import { checkPattern } from '../../core/pattern/read/check.js';
import type { Pattern } from '../../core/pattern/pattern.js';
import '../jitless.js';
import type { ThinPiece } from './record.js';

const number = z.number().finite();
const text = z.string().max(1000);
const bead = z.looseObject({
  id: z.string().min(1).max(200),
  name: text,
  hex: z.string().regex(/^#[0-9a-f]{6}$/),
  lab: z.tuple([number, number, number]),
});

/** Whether a pattern can be worked as it stands. */
const isWhole = (pattern: Pattern) =>
  checkPattern(pattern).every(({ code }) => code === 'letter-out-of-order');

/** What stands in `piece.json` of a saved piece. The parts of steps that we do not know yet are kept as they are. */
const savedPiece = z.object({
  format: z.literal('rondure-piece'),
  version: z.literal(1),
  piece: z.looseObject({
    title: z.string().min(1).max(200),
    sample: z.boolean(),
    palette: z.object({
      name: text,
      beads: z.array(bead).max(100_000),
      diameterMm: number.positive(),
    }),
    wish: z.looseObject({
      shape: z.looseObject({ wedges: z.int().min(3).max(12) }),
      place: z.looseObject({}),
      art: z.enum(['auto', 'photo', 'drawing']),
      colours: z.int().min(1).max(24),
      keep: z.array(text),
      leaveOut: z.array(text),
      edges: z.number().min(0).max(1).default(0),
      lift: z.number().min(0).max(1).default(0),
      cutOut: z.boolean().default(false),
      instead: z.record(z.string(), z.string()).default({}),
    }),
    laid: z.record(z.string().regex(/^[01]:\d+$/), z.string().min(1).max(200)),
    laidBeads: z.array(bead).max(100_000).optional(),
    laidWedges: z.int().min(3).max(12).optional(),
    work: workSchema.refine(({ pattern }) => isWhole(pattern as Pattern)).optional(),
  }),
  /** Name of the picture's file in the zip. */
  picture: z.string().min(1).max(300).optional(),
  /** Name of the back's. */
  back: z.string().min(1).max(300).optional(),
});

/** What stands in a saved piece. */
export interface SavedPiece {
  readonly piece: Omit<ThinPiece, 'pictureId' | 'backPictureId'>;
  readonly picture?: string | undefined;
  readonly back?: string | undefined;
}

/** The text of `piece.json`. */
export function savedPieceText({ piece, picture, back }: SavedPiece): string {
  const whole = {
    format: 'rondure-piece',
    version: 1,
    piece,
    ...(picture && { picture }),
    ...(back && { back }),
  };
  return `${JSON.stringify(whole, null, 1)}\n`;
}

/** Reads it back; `newer` for a piece of a later edition, undefined for anything else that cannot be read. */
export function readSavedPiece(json: string): SavedPiece | 'newer' | undefined {
  let data: unknown;
  try {
    data = JSON.parse(json);
  } catch {
    return undefined;
  }
  const { format, version } = (data ?? {}) as { format?: unknown; version?: unknown };
  if (format === 'rondure-piece' && typeof version === 'number' && version > 1) return 'newer';
  const read = savedPiece.safeParse(data);
  if (!read.success) return undefined;
  const { piece, picture, back } = read.data;
  return { piece: piece as unknown as SavedPiece['piece'], picture, back };
}
