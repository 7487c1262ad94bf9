/** Bytes one after the other. */
export function joined(parts: readonly Uint8Array[]): Uint8Array {
  const result = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let place = 0;
  for (const part of parts) {
    result.set(part, place);
    place += part.length;
  }
  return result;
}
