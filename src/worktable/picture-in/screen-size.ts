/** The longer side of a picture as it is shown, pixels; what is larger is drawn smaller, which the eye does not see. */
const mostPx = 1400;

/** The size in which a picture is shown; undefined where that is its own. */
export function screenSize(
  width: number,
  height: number,
): { width: number; height: number } | undefined {
  const scale = mostPx / Math.max(width, height);
  if (scale >= 1) return undefined;
  const scaled = (side: number) => Math.max(1, Math.round(side * scale));
  return { width: scaled(width), height: scaled(height) };
}
