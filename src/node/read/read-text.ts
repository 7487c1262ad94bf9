import { RondureError } from '../../core/errors.js';

/** Longer than the largest chart with its pattern inside. */
const mostMegabytes = 32;

/**
 * The text of a file that somebody may have typed: UTF-8, or UTF-16 where a byte order mark says
 * so, as some editors write it. The mark itself is left out. Throws 'text-not-unicode',
 * 'file-too-big'.
 */
export function textOf(bytes: Uint8Array, name: string): string {
  if (bytes.length > 1e6 * mostMegabytes)
    throw new RondureError('file-too-big', {
      name,
      megabytes: Math.ceil(bytes.length / 1e6),
      limitMegabytes: mostMegabytes,
    });
  const [first, second] = bytes;
  const utf16 = { 0xfffe: 'utf-16le', 0xfeff: 'utf-16be' }[(first << 8) | second];
  try {
    return new TextDecoder(utf16 ?? 'utf-8', { fatal: true }).decode(bytes);
  } catch (cause) {
    throw new RondureError('text-not-unicode', { name }, { cause });
  }
}

/** How to name a file, or the standard input for `-`, at the beginning of a sentence. */
export function nameIn(pathOrDash: string): string {
  return pathOrDash === '-' ? 'The standard input' : pathOrDash;
}
