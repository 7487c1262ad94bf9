/** Red, green, blue as 0..255, or undefined when `text` is no colour; `#` optional, 3 or 6 digits. */
export function parseHex(text: string): [number, number, number] | undefined {
  const digits = /^#?([0-9a-f]{3}|[0-9a-f]{6})$/i.exec(text.trim())?.[1];
  if (digits === undefined) return undefined;
  const long = digits.length === 3 ? digits.replace(/./g, '$&$&') : digits;
  const all = Number.parseInt(long, 16);
  return [all >> 16, (all >> 8) & 255, all & 255];
}

/** `#rrggbb` in small letters; red, green, blue are rounded and clamped to 0..255. */
export function formatHex(r: number, g: number, b: number): string {
  return `#${pair(r)}${pair(g)}${pair(b)}`;
}

function pair(channel: number): string {
  const code = Math.min(255, Math.max(0, Math.round(channel)));
  return code.toString(16).padStart(2, '0');
}
