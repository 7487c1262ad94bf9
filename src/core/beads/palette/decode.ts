/**
 * The text of a palette file: UTF-8, with or without a byte order mark; UTF-16 with one; and where
 * the bytes are no UTF-8, Windows-1252, which older spreadsheets write.
 */
export function decodePalette(bytes: Uint8Array): string {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return new TextDecoder('utf-16le').decode(bytes);
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return new TextDecoder('utf-16be').decode(bytes);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return windows1252(bytes);
  }
}

/** Bytes 80 to 9F of the code page (WHATWG, Encoding, index-windows-1252). */
const from80 = '€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008dŽ\u008f\u0090‘’“”•–—˜™š›œ\u009džŸ';

/** By hand: some engines take the label for Latin-1. */
function windows1252(bytes: Uint8Array): string {
  const parts: string[] = [];
  for (const byte of bytes) {
    parts.push(byte >= 0x80 && byte <= 0x9f ? from80[byte - 0x80] : String.fromCharCode(byte));
  }
  return parts.join('');
}
