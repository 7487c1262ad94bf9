/**
 * Colours as they look to eyes that lack one kind of cone, and in a grey print.
 *
 * Matrices in linear sRGB at severity 1.0: G. M. Machado, M. M. Oliveira, L. A. F. Fernandes,
 * "A Physiologically-based Model for Simulation of Color Vision Deficiency", IEEE Transactions on
 * Visualization and Computer Graphics 15(6):1291-1298, 2009, doi 10.1109/TVCG.2009.113.
 */

/** How a colour is looked at. */
export type Sight = 'usual' | 'protanopia' | 'deuteranopia' | 'tritanopia' | 'grey';

/** Every sight, the usual one first. */
export const sights: readonly Sight[] = [
  'usual',
  'protanopia',
  'deuteranopia',
  'tritanopia',
  'grey',
];

type Matrix = readonly [number, number, number, number, number, number, number, number, number];

// prettier-ignore
const matrices: Record<Exclude<Sight, 'usual'>, Matrix> = {
  protanopia: [
    0.152286, 1.052583, -0.204868,
    0.114503, 0.786281, 0.099216,
    -0.003882, -0.048116, 1.051998,
  ],
  deuteranopia: [
    0.367322, 0.860646, -0.227968,
    0.280085, 0.672501, 0.047413,
    -0.01182, 0.04294, 0.968881,
  ],
  tritanopia: [
    1.255528, -0.076749, -0.178779,
    -0.078411, 0.930809, 0.147602,
    0.004733, 0.691367, 0.3039,
  ],
  // Relative luminance of sRGB (IEC 61966-2-1; weights of ITU-R BT.709) in every channel.
  grey: [
    0.2126, 0.7152, 0.0722,
    0.2126, 0.7152, 0.0722,
    0.2126, 0.7152, 0.0722,
  ],
};

/** Linear r, g, b (0..1) as seen so, clamped to 0..1. */
export function seenAs(
  sight: Sight,
  [r, g, b]: readonly [number, number, number],
): [number, number, number] {
  if (sight === 'usual') return [r, g, b];
  const m = matrices[sight];
  return [
    clamped(m[0] * r + m[1] * g + m[2] * b),
    clamped(m[3] * r + m[4] * g + m[5] * b),
    clamped(m[6] * r + m[7] * g + m[8] * b),
  ];
}

function clamped(value: number): number {
  return Math.min(1, Math.max(0, value));
}
