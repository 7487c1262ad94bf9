import { deflateSync, inflateSync } from 'node:zlib';
import { crc32 } from './crc32.js';

/** A stream of whole numbers that a seed repeats: mulberry32 (T. Ettinger, public domain). */
export class Dice {
  constructor(private state: number) {}
  /** 0 to below `sides`. */
  roll(sides: number): number {
    this.state = (this.state + 0x6d2b79f5) | 0;
    let t = Math.imul(this.state ^ (this.state >>> 15), 1 | this.state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return Math.floor((((t ^ (t >>> 14)) >>> 0) / 2 ** 32) * sides);
  }
  of<T>(list: readonly T[]): T {
    return list[this.roll(list.length)];
  }
}

const deep = (levels: number) => JSON.parse('['.repeat(levels) + ']'.repeat(levels)) as unknown;
const oddTexts = [
  ...['', ' ', '\u0000', 'a\u001b[31mb', 'a\u0007\u0008', '\ud800', '\ufffe', '\uffff', '\u202egnp'],
  ...['a\nb', '\u2028', '🌕', 'e\u0301', '<b>&amp;', ']]>', '=cmd()', '__proto__', 'x'.repeat(300)],
  ...['NaN', '-1', '#ffffff', 'ÿþ', '\u0085', '\u200b', '٣', 'العربية', '𠮷', 'A'.repeat(200)],
]; // prettier-ignore
const oddNumbers = [
  ...[0, -0, 1, -1, 2, 3, 0.5, 1e-300, 5e-324, 1e300, 1.7e308, -1e300, 1e9, 2 ** 31, 2 ** 53, 1e21],
  ...[80, 81, 12, 13, 360, -720, 1e6, 0.1],
]; // prettier-ignore

type Holder = Record<string, unknown> | unknown[];
interface Spot {
  readonly holder: Holder;
  readonly key: string | number;
}

/** Every place of a JSON value, outermost first. */
function spotsOf(value: unknown): Spot[] {
  const spots: Spot[] = [];
  const walk = (holder: unknown) => {
    if (typeof holder !== 'object' || holder === null) return;
    for (const key of Array.isArray(holder) ? holder.keys() : Object.keys(holder)) {
      spots.push({ holder: holder as Holder, key });
      walk((holder as Record<string | number, unknown>)[key]);
    }
  };
  walk(value);
  return spots;
}

/** One to four changes of a JSON text that keep it JSON, and now and then one that does not. */
export function mutateJson(text: string, dice: Dice): string {
  if (dice.roll(12) === 0) return mutateText(text, dice);
  const root = { value: JSON.parse(text) as unknown };
  for (let n = 1 + dice.roll(3); n > 0; n--) {
    const { holder, key } = dice.of(spotsOf(root));
    const at = holder as Record<string | number, unknown>;
    at[key] = otherValue(at, key, dice);
    if (at[key] === undefined && !Array.isArray(holder)) delete at[key];
  }
  return JSON.stringify(root.value) ?? '';
}

function otherValue(at: Record<string | number, unknown>, key: string | number, dice: Dice) {
  const value = at[key];
  const kin = dice.roll(10) < 7;
  if (kin && typeof value === 'string') {
    if (value.length > 300 && /^[A-Za-z0-9+/=]+$/.test(value)) return damagedBase64(value, dice);
    return mutateWord(value, dice);
  }
  if (kin && typeof value === 'number') return mutateNumber(value, dice);
  if (kin && typeof value === 'boolean') return !value;
  if (kin && Array.isArray(value)) return mutateList(value, dice);
  if (kin && typeof value === 'object' && value !== null) {
    const keys = Object.keys(value);
    const { [dice.of(keys) ?? '']: moved, ...rest } = value as Record<string, unknown>;
    return dice.roll(2) === 0 ? rest : { ...rest, [dice.of([...keys, ...oddTexts])]: moved };
  }
  return dice.of<unknown>([
    ...[undefined, null, true, [], {}, [[]], deep(40), deep(3000), value, [value], { a: value }],
    ...oddTexts,
    ...oddNumbers,
  ]);
}

function mutateNumber(value: number, dice: Dice): number {
  const near = [value + 1, value - 1, -value, value * 1000, value / 1000, value + 0.5, value * 2];
  return dice.of([...near, ...oddNumbers]);
}

function mutateList(list: readonly unknown[], dice: Dice): unknown[] {
  const [a, b] = [dice.roll(list.length + 1), dice.roll(list.length + 1)];
  return dice.of([
    list.filter((_, at) => at !== a),
    [...list.slice(0, a), ...list.slice(Math.min(a, b))],
    [...list].reverse(),
    list.slice(0, a),
    [...list, ...list],
  ]);
}

/** A word changed by a letter, cut, doubled, or another. */
function mutateWord(word: string, dice: Dice): string {
  const at = dice.roll(word.length + 1);
  const odd = dice.of(oddTexts);
  return dice.of([
    word.slice(0, at),
    word.slice(0, at) + odd + word.slice(at),
    word.slice(0, at) + dice.of([...'AZIO._09a#/ \u0000\u001b']) + word.slice(at + 1),
    word + word,
    odd,
  ]);
}

/** Any text: letters, lines and numbers changed, doubled, moved or gone. */
export function mutateText(text: string, dice: Dice): string {
  let made = text;
  for (let n = 1 + dice.roll(3); n > 0; n--) {
    const lines = made.split('\n');
    const line = dice.roll(lines.length);
    const at = dice.roll(made.length + 1);
    const kind = dice.roll(8);
    if (kind === 0) lines.splice(line, 1);
    else if (kind === 1) lines.splice(dice.roll(lines.length), 0, lines[line]);
    else if (kind === 2) lines[line] = mutateWord(lines[line], dice);
    else if (kind === 3) lines[line] = lines[line].replace(/[\d.]+/, () => `${dice.of(oddNumbers)}`);
    else if (kind === 4) lines[line] = mutateCell(lines[line], dice);
    else if (kind === 5) lines.splice(line, lines.length);
    made = kind > 5 ? made.slice(0, at) + dice.of(oddTexts) + made.slice(at + dice.roll(4)) : lines.join('\n');
  }
  return made;
} // prettier-ignore

function mutateCell(line: string, dice: Dice): string {
  const cells = line.split(/([,;\t ]+)/);
  const cell = 2 * dice.roll((cells.length + 1) / 2);
  cells[cell] = mutateWord(cells[cell] ?? '', dice);
  return cells.join('');
}

function damagedBase64(text: string, dice: Dice): string {
  if (dice.roll(4) === 0) return mutateWord(text, dice);
  return Buffer.from(mutatePng(Buffer.from(text, 'base64'), dice)).toString('base64');
}

/** Any bytes: some changed, cut, doubled or gone. */
export function mutateBytes(bytes: Uint8Array, dice: Dice): Uint8Array {
  let made = Buffer.from(bytes);
  for (let n = 1 + dice.roll(4); n > 0; n--) {
    const at = dice.roll(made.length + 1);
    const kind = dice.roll(5);
    const length = 1 + dice.roll(1 << dice.roll(10));
    if (kind < 2 && at < made.length) made[at] = dice.roll(256);
    else if (kind === 2) made = Buffer.concat([made.subarray(0, at), made.subarray(at + length)]);
    else if (kind === 3) made = made.subarray(0, Math.max(1, at));
    else made = Buffer.concat([made.subarray(0, at), made.subarray(Math.max(0, at - length))]);
  }
  return made;
}

interface Chunk {
  readonly type: string;
  readonly data: Buffer;
}

/** PNG specification 5.3: length, type, data, CRC. */
export function pngChunks(png: Buffer): Chunk[] {
  const chunks: Chunk[] = [];
  for (let at = 8; at + 12 <= png.length;) {
    const length = png.readUInt32BE(at);
    const type = png.toString('latin1', at + 4, at + 8);
    chunks.push({ type, data: png.subarray(at + 8, at + 8 + length) });
    at += 12 + length;
  }
  return chunks;
}

export function pngOf(chunks: readonly Chunk[]): Buffer {
  const parts = chunks.map(({ type, data }) => {
    const body = Buffer.concat([Buffer.from(type, 'latin1'), data]);
    const [head, tail] = [Buffer.alloc(4), Buffer.alloc(4)];
    head.writeUInt32BE(data.length);
    tail.writeUInt32BE(crc32(body));
    return Buffer.concat([head, body, tail]);
  });
  return Buffer.concat([Buffer.from('\x89PNG\r\n\x1a\n', 'latin1'), ...parts]);
}

/** A PNG whose chunks are changed with their check sums made right; or just bytes. */
export function mutatePng(
  png: Buffer,
  dice: Dice,
  text?: () => Buffer,
): Uint8Array {
  if (dice.roll(4) === 0) return mutateBytes(png, dice);
  const chunks = pngChunks(png);
  const which = text && dice.roll(3) > 0 ? chunks.findIndex(({ type }) => type === 'iTXt') : dice.roll(chunks.length);
  const { type, data } = chunks[which];
  const other = otherChunk(type, data, dice, text);
  const kind = dice.roll(8);
  if (kind === 0) chunks.splice(which, 1);
  else if (kind === 1) chunks.splice(dice.roll(chunks.length), 0, chunks[which]);
  else chunks[which] = { type: kind === 2 ? dice.of(['IDAT', 'PLTE', 'tRNS', 'iTXt', 'abcd', 'IEND']) : type, data: other };
  return pngOf(chunks);
} // prettier-ignore

function otherChunk(type: string, data: Buffer, dice: Dice, text?: () => Buffer): Buffer {
  const copy = Buffer.from(data);
  if (type === 'IHDR' && copy.length === 13) {
    const at = dice.roll(7);
    if (at < 2) copy.writeUInt32BE(dice.of([0, 1, 5, 512, 513, 60_000, 2 ** 31, 2 ** 32 - 1]), 4 * at);
    else copy[6 + at] = dice.of([0, 1, 2, 3, 4, 6, 8, 16, 255]);
    return copy;
  }
  if (type === 'IDAT' && dice.roll(2) === 0) {
    // Where one chunk holds all pixels they can be changed behind their packing.
    const rows = rowsIn(data);
    if (rows.length > 0) return deflateSync(mutateBytes(rows, dice));
  }
  if (type === 'iTXt' && text && dice.roll(4) > 0) return text();
  return Buffer.from(mutateBytes(copy.length > 0 ? copy : Buffer.from([1]), dice));
} // prettier-ignore

function rowsIn(packed: Buffer): Buffer {
  try {
    return inflateSync(packed);
  } catch {
    return Buffer.alloc(0);
  }
}
