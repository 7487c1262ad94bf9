/** Tables that move, join or exchange letters beside one another (OpenType 1.9; Apple `kern`). */
const shaping = ['GSUB', 'GPOS', 'kern', 'morx', 'mort'];

/**
 * A font that sets letters side by side as they are, each as wide as its advance: a copy whose
 * shaping tables go by names that no reader knows. Letters so stand where the drawing put them, and
 * the writer need not look for anything to do between them, which took most of its time.
 *
 * @param file bytes of a TrueType or OpenType file
 */
export function plainFont(file: Uint8Array): Uint8Array {
  const copy = file.slice();
  const view = new DataView(copy.buffer);
  const tables = view.getUint16(4);
  for (let n = 0; n < tables; n++) {
    const at = 12 + 16 * n;
    const tag = String.fromCharCode(...copy.subarray(at, at + 4));
    if (shaping.includes(tag)) copy[at] = 'x'.charCodeAt(0);
  }
  return copy;
}
