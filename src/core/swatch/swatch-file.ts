import { RondureError } from '../errors.js';
import { isRecord, isTooDeep, issueText, pathText } from '../pattern/parse.js';
import { en } from '../../words/index.js';
import type { Words } from '../../words/index.js';
import { swatchFileSchema, swatchVersion } from './schema.js';
import type { Swatch } from './schema.js';

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
export function parseSwatch(text: string, where: string, words: Words = en): Swatch {
  const given = parseJson(text);
  if (!isRecord(given) || given.format !== 'rondure-swatch') {
    throw new RondureError('swatch-not-ours', { where });
  }
  const { version } = given;
  if (typeof version === 'number' && Number.isInteger(version) && version > swatchVersion) {
    throw new RondureError('swatch-too-new', { where, version, known: swatchVersion });
  }
  if (isTooDeep(given)) {
    throw new RondureError('swatch-invalid', { where, path: '', problem: words.pattern.tooDeep });
  }
  const result = swatchFileSchema.safeParse(given);
  if (!result.success) {
    const [first] = result.error.issues;
    const facts = { path: pathText(first.path), problem: issueText(words, first, given) };
    throw new RondureError('swatch-invalid', { where, ...facts });
  }
  const { format: _format, version: _version, ...swatch } = result.data;
  requireSense(swatch as Swatch, where, words);
  return swatch as Swatch;
}

/** What a stitch can be, whatever was typed into the file. */
function requireSense(swatch: Swatch, where: string, words: Words): void {
  const bounds = { roundHeightMm: [0.1, 50], stitchWidthMm: [0.1, 50], lean: [-1, 1] } as const;
  for (const [path, [least, most]] of Object.entries(bounds)) {
    const value = swatch[path as keyof typeof bounds]?.value;
    if (value !== undefined && !(value >= least && value <= most)) {
      const problem = en.expected.pattern.between(least, most);
      throw new RondureError('swatch-invalid', { where, path: `${path}.value`, problem });
    }
  }
  for (const [path, most] of Object.entries(mostOfThread)) {
    const value = swatch[path as keyof typeof mostOfThread]?.value;
    if (value !== undefined && !(value > 0 && value <= most)) {
      const problem =
        value > 0 ? words.expected.pattern.atMost(most) : words.expected.pattern.aboveZero;
      throw new RondureError('swatch-invalid', { where, path: `${path}.value`, problem });
    }
  }
}

/** What the largest bead that can be measured could take, millimetres. */
const mostOfThread = { perStitchMm: 800, beadLengthMm: 50 } as const;

function parseJson(text: string): unknown {
  try {
    return JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    return undefined;
  }
}
