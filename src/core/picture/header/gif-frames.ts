/**
 * The same GIF with its first frame alone: libraries look through all frames before they draw any.
 * GIF89a, sections 15 to 26. The file itself where it has one frame or ends inside it.
 */
export function withoutFurtherFrames(bytes: Uint8Array): Uint8Array {
  const end = endOfFirstFrame(bytes);
  if (end === undefined || end + 1 >= bytes.length) return bytes;
  const [trailer, first] = [0x3b, new Uint8Array(end + 1)];
  first.set(bytes.subarray(0, end));
  first[end] = trailer;
  return first;
}

const tableBytes = (flags: number) => (flags & 0x80 ? 3 * 2 ** ((flags & 7) + 1) : 0);

/** Offset behind the first image, or undefined when the file ends before it. */
function endOfFirstFrame(bytes: Uint8Array): number | undefined {
  const [extension, image] = [0x21, 0x2c];
  let place = 13 + tableBytes(bytes[10]);
  while (place < bytes.length) {
    const block = bytes[place];
    if (block === image) {
      // Nine bytes of where and how, colours of its own, and the size of a code.
      const from = place + 10 + tableBytes(bytes[place + 9]) + 1;
      return afterSubBlocks(bytes, from);
    }
    if (block !== extension) return undefined;
    const next = afterSubBlocks(bytes, place + 2);
    if (next === undefined) return undefined;
    place = next;
  }
  return undefined;
}

/** Each has its length in front; one of none ends them. */
function afterSubBlocks(bytes: Uint8Array, from: number): number | undefined {
  let place = from;
  while (place < bytes.length) {
    const length = bytes[place++];
    if (length === 0) return place;
    place += length;
  }
  return undefined;
}
