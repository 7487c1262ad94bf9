import { RondureError } from '../errors.js';
import { isTooDeep, parseJsonText } from '../input-limits.js';
import { isRecord, issueFault, pathText } from '../value-fault.js';
import { shapeLimits } from '../panel/limits.js';
import { swatchFileSchema, swatchVersion } from './schema.js';
import type { Swatch } from './swatch.js';

/** The text of swatch.json. */
export function swatchText(swatch: Swatch): string {
  const file = { format: 'rondure-swatch', version: swatchVersion, ...swatch };
  return `${JSON.stringify(file, null, 2)}\n`;
}

/**
 * Reads the text of a swatch.json.
 *
 * @param where how to name the file in an error, for instance its path
 * @throws RondureError `swatch-not-ours`, `swatch-too-new`, `swatch-invalid`
 */
export function parseSwatch(text: string, where: string): Swatch {
  const given = parseJson(text);
  if (!isRecord(given) || given.format !== 'rondure-swatch') {
    throw new RondureError('swatch-not-ours', { where });
  }
  const { version } = given;
  if (typeof version === 'number' && Number.isInteger(version) && version > swatchVersion) {
    throw new RondureError('swatch-too-new', { where, version, known: swatchVersion });
  }
  if (isTooDeep(given)) {
    throw new RondureError('swatch-invalid', { where, path: '', problem: { kind: 'too-deep' } });
  }
  const result = swatchFileSchema.safeParse(given);
  if (!result.success) {
    const [first] = result.error.issues;
    const facts = { path: pathText(first.path), problem: issueFault(first, given) };
    throw new RondureError('swatch-invalid', { where, ...facts });
  }
  const { format: _format, version: _version, ...swatch } = result.data;
  requireSense(swatch as Swatch, where);
  return swatch as Swatch;
}

/** What a stitch can be, whatever was typed into the file. */
function requireSense(swatch: Swatch, where: string): void {
  const { stitchMm, lean } = shapeLimits;
  const bounds = { roundHeightMm: stitchMm, stitchWidthMm: stitchMm, lean };
  for (const [path, { least, most }] of Object.entries(bounds)) {
    const value = swatch[path as keyof typeof bounds]?.value;
    if (value !== undefined && !(value >= least && value <= most)) {
      const problem = { kind: 'between', least, most } as const;
      throw new RondureError('swatch-invalid', { where, path: `${path}.value`, problem });
    }
  }
  for (const [path, most] of Object.entries(mostOfThread)) {
    const value = swatch[path as keyof typeof mostOfThread]?.value;
    if (value !== undefined && !(value > 0 && value <= most)) {
      const problem = value > 0 ? ({ kind: 'at-most', most } as const) : aboveZero;
      throw new RondureError('swatch-invalid', { where, path: `${path}.value`, problem });
    }
  }
}

const aboveZero = { kind: 'above-zero' } as const;

/** What the largest bead that can be measured could take, millimetres. */
const mostOfThread = { perStitchMm: 800, beadLengthMm: 50 } as const;

function parseJson(text: string): unknown {
  try {
    return parseJsonText(text.replace(/^\uFEFF/, ''));
  } catch {
    return undefined;
  }
}
