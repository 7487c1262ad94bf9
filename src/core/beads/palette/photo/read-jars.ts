import { upperMedian } from '../../../median.js';
import { RondureError, warning } from '../../../errors.js';
import type { Warning } from '../../../errors.js';
import type { Picture } from '../../../picture/picture.js';
import { csvText } from '../../../csv.js';
import type { Words } from '../../../../words/index.js';
import { beadMask, dilated, eroded } from './bead-mask.js';
import { findGrid } from './grid.js';
import type { FoundGrid, JarGrid } from './grid.js';
import { liesInGrid, liesOnPaper } from './grid-check.js';
import { jarColour } from './jar-colour.js';
import { lightMap } from './light-map.js';
import { lampLight } from './lamp-light.js';

/** The beads at one place of the grid, rows and columns from 1. */
export interface Jar {
  /** Row of the heap, from 1. */
  readonly row: number;
  /** Place in its row, from 1. */
  readonly column: number;
  /** Its colour as #rrggbb, with the light of the paper taken away. */
  readonly hex: string;
}

/** Longest side that is looked at; a heap is then still hundreds of pixels. */
const mostPx = 1200;
/** Fewer pixels than this share of a cell are dust. */
const leastShare = 0.001;

/**
 * Reads the colours of heaps of beads that lie in rows and columns on white paper, the paper taken
 * as #ffffff: its light is evened out over the picture and once more around each heap.
 *
 * @param where how to name the picture in an error
 * @throws RondureError `jars-none`, `jars-not-in-grid`
 */
export function readJars(
  picture: Picture,
  grid: JarGrid,
  where: string,
): { jars: Jar[]; notes: Warning[] } {
  const map = lightMap(picture, mostPx);
  const { width, height } = map;
  const paper = lampLight(map);
  const even = map.light.map((value, at) => value / paper[at]);
  const mask = beadMask(even, width, height);
  // Lit tops of pale beads look like paper: what lies among beads counts as bead.
  const solid = eroded(dilated(mask, width, height, 5), width, height, 7);
  const found = findGrid(solid, width, height, grid);
  if (!found || !liesOnPaper(even, mask, found)) {
    throw new RondureError('jars-none', { name: where });
  }
  const cells = grid.rows * grid.columns;
  const heaps = heapsOf(solid, found, cells);
  const cellArea = found.pitchX * found.pitchY;
  const isEmpty = heaps.map((heap) => heap.length < Math.max(6, leastShare * cellArea));
  const empty = emptyPlaces(isEmpty, grid);
  if (empty.length === cells) throw new RondureError('jars-none', { name: where });
  if (!liesInGrid(heaps, isEmpty, found, grid, width)) {
    const { rows, columns } = grid;
    const facts = { name: where, rows, columns, empty: empty.slice(0, 8) };
    throw new RondureError('jars-not-in-grid', facts);
  }
  const around = paperAround(even, dilated(mask, width, height, 3), width, found, cells);
  const jars: Jar[] = [];
  const mixed: string[] = [];
  heaps.forEach((heap, cell) => {
    if (isEmpty[cell]) return;
    const { hex, mixed: isMixed } = jarColour(even, withoutPaper(even, heap), around[cell]);
    const jar = { ...placeOf(cell, grid), hex };
    jars.push(jar);
    if (isMixed) mixed.push(jarId(jar));
  });
  const notes = paperNotes(picture, paper);
  if (empty.length > 0) notes.push(warning('jars-empty', { places: empty }));
  if (mixed.length > 0) notes.push(warning('jar-mixed', { places: mixed }));
  return { jars, notes };
}

/** `r1c1` and so on. */
export function jarId({ row, column }: Pick<Jar, 'row' | 'column'>): string {
  return `r${row}c${column}`;
}

/** The jars as a palette that `readPalette` reads. */
export function jarsCsv(jars: readonly Jar[], words: Words): string {
  const rows = jars.map((jar) => [jarId(jar), words.beads.jar(jar), jar.hex]);
  return csvText(['id', 'name', 'hex'], rows);
}

function placeOf(cell: number, { columns }: JarGrid) {
  return { row: Math.floor(cell / columns) + 1, column: (cell % columns) + 1 };
}

function emptyPlaces(isEmpty: readonly boolean[], grid: JarGrid): string[] {
  return isEmpty.flatMap((empty, cell) => (empty ? [jarId(placeOf(cell, grid))] : []));
}

function heapsOf(solid: Uint8Array, { cellOf, offset }: FoundGrid, cells: number): number[][] {
  const heaps = Array.from({ length: cells }, (): number[] => []);
  for (let at = 0; at < solid.length; at++) {
    if (solid[at] && offset[at] < 0.6) heaps[cellOf[at]].push(at);
  }
  return heaps;
}

/**
 * The heap without the paper that shows between loose beads; a heap whose beads are nearly as light
 * as paper keeps it all.
 */
function withoutPaper(even: Float64Array, heap: readonly number[]): readonly number[] {
  const least = (at: number) => Math.min(even[3 * at], even[3 * at + 1], even[3 * at + 2]);
  const beads = heap.filter((at) => least(at) < 0.8);
  const sorted = beads.map(least).sort((a, b) => a - b);
  const pale = sorted.length === 0 || sorted[Math.floor(sorted.length * 0.6)] > 0.55;
  return pale ? heap : beads;
}

/** Median light of the paper around each heap, where 1 is what the whole picture's paper says. */
function paperAround(
  even: Float64Array,
  notPaper: Uint8Array,
  width: number,
  { cellOf }: FoundGrid,
  cells: number,
): [number, number, number][] {
  const places = Array.from({ length: cells }, (): number[] => []);
  for (let at = 0; at < notPaper.length; at++) {
    if (notPaper[at] || (at + Math.floor(at / width)) % 3 !== 0) continue;
    const least = Math.min(even[3 * at], even[3 * at + 1], even[3 * at + 2]);
    if (least > 0.85) places[cellOf[at]].push(at);
  }
  return places.map((found) => {
    const usual = (c: number) => upperMedian(found.map((at) => even[3 * at + c])) ?? 1;
    return [usual(0), usual(1), usual(2)];
  });
}

function paperNotes(picture: Picture, paper: Float64Array): Warning[] {
  const notes: Warning[] = [];
  let burnt = 0;
  let all = 0;
  for (let at = 0; at < picture.data.length; at += 4) {
    const least = Math.min(picture.data[at], picture.data[at + 1], picture.data[at + 2]);
    if (least > 200) all++;
    if (least > 253) burnt++;
  }
  const percent = Math.round((100 * burnt) / Math.max(1, all));
  if (percent > 20) notes.push(warning('paper-too-bright', { percent }));
  const mean = paper.reduce((sum, value) => sum + value, 0) / paper.length;
  if (mean < 0.12) notes.push(warning('paper-too-dark', undefined));
  return notes;
}
