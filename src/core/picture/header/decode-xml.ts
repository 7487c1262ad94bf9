/**
 * Bytes to text as XML 1.0 appendix F tells it: by byte order mark, then by the declared encoding,
 * else UTF-8. What does not decode becomes U+FFFD.
 */
export function decodeXml(bytes: Uint8Array): string {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return new TextDecoder('utf-16le').decode(bytes);
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return new TextDecoder('utf-16be').decode(bytes);
  if (bytes[0] === 0x3c && bytes[1] === 0) return new TextDecoder('utf-16le').decode(bytes);
  if (bytes[0] === 0 && bytes[1] === 0x3c) return new TextDecoder('utf-16be').decode(bytes);
  const head = new TextDecoder('latin1').decode(bytes.subarray(0, 200));
  const named = /^\s*<\?xml[^>]*?encoding\s*=\s*["']([\w.:-]+)["']/.exec(head)?.[1];
  if (named !== undefined && !/^utf-?16/i.test(named)) {
    try {
      return new TextDecoder(named).decode(bytes);
    } catch {
      // an encoding nobody knows: read it as UTF-8
    }
  }
  return new TextDecoder('utf-8').decode(bytes);
}
