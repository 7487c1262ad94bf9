import type { PixelSize } from '../picture.js';

/** ISO/IEC 23008-12, 6.5.3: where `ispe` boxes, with the size of an item, lie. */
const inside: Record<string, { next: string; skip: number } | undefined> = {
  file: { next: 'meta', skip: 0 },
  meta: { next: 'iprp', skip: 4 },
  iprp: { next: 'ipco', skip: 0 },
  ipco: { next: 'ispe', skip: 0 },
};

/** The largest size that is told of any item: the picture's own, since tiles and alpha fit in it. */
export function avifSize(view: DataView): PixelSize | undefined {
  return largest(view, 'file', 0, view.byteLength);
}

function largest(view: DataView, kind: string, from: number, to: number): PixelSize | undefined {
  if (kind === 'ispe') return { width: view.getUint32(from + 4), height: view.getUint32(from + 8) };
  const { next, skip } = inside[kind]!;
  let found: PixelSize | undefined;
  for (let place = from + skip; place + 8 <= to;) {
    const [length, head] = boxLength(view, place, to);
    if (length < head) return found;
    if (view.getUint32(place + 4) === code(next)) {
      const size = largest(view, next, place + head, Math.min(to, place + length));
      if (size && size.width * size.height > (found ? found.width * found.height : 0)) found = size;
    }
    place += length;
  }
  return found;
}

/** Bytes of a box and of its head (ISO/IEC 14496-12, 4.2): 0 goes to the end, 1 says it in 64 bits. */
function boxLength(view: DataView, place: number, to: number): [length: number, head: number] {
  const length = view.getUint32(place);
  if (length === 0) return [to - place, 8];
  return length === 1 ? [Number(view.getBigUint64(place + 8)), 16] : [length, 8];
}

const code = (name: string) =>
  Array.from(name).reduce((sum, letter) => 256 * sum + letter.charCodeAt(0), 0);
