import { openDB } from 'idb';
import type { DBSchema, IDBPDatabase } from 'idb';
import type { PiecePalette } from '../store/piece.js';
import type { KeptPiece, KeptStroke } from './record.js';

/** What this browser keeps: pieces, each step of their histories apart, and picture files once. */
interface Kept extends DBSchema {
  pieces: { key: string; value: KeptPiece };
  /** Key: id of the piece, place in its history. */
  strokes: { key: [string, number]; value: KeptStroke };
  /** Key: SHA-256 of the file. */
  pictures: { key: string; value: { name: string; file: Blob } };
  /** The maker's own beads, by the name of the palette. */
  palettes: { key: string; value: PiecePalette };
  /** Small things by name: which piece was open last. */
  notes: { key: string; value: string };
}

export type KeepDatabase = IDBPDatabase<Kept>;

let opened: Promise<KeepDatabase> | undefined;

/**
 * The database of this browser.
 *
 * @throws DOMException where the browser keeps nothing, as private windows may
 */
export function database(): Promise<KeepDatabase> {
  opened ??= openDB<Kept>('rondure', 1, {
    upgrade(db) {
      db.createObjectStore('pieces', { keyPath: 'id' });
      db.createObjectStore('strokes');
      db.createObjectStore('pictures');
      db.createObjectStore('palettes', { keyPath: 'name' });
      db.createObjectStore('notes');
    },
    // A newer edition of the page in another window wants to change the database: make way.
    blocking: (_now, _wanted, event) => (event.target as IDBDatabase).close(),
  });
  return opened;
}

/** The steps of one piece, from a place of its history on. */
export const strokesFrom = (id: string, from: number) =>
  IDBKeyRange.bound([id, from], [id, Number.MAX_SAFE_INTEGER]);
