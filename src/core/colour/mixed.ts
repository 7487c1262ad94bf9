/** A colour on its way to grey `to` (0 to 255), `share` of the way. */
export function mixed(hex: string, to: number, share: number): string {
  const parts = [1, 3, 5].map((at) => parseInt(hex.slice(at, at + 2), 16));
  const mix = parts.map((part) => Math.round(part + (to - part) * share));
  return `#${mix.map((part) => part.toString(16).padStart(2, '0')).join('')}`;
}
