import { RondureError } from '../../errors.js';
import { isTooDeep, parseJsonText } from '../../input-limits.js';
import { isRecord, issueFault, pathText } from '../../value-fault.js';
import { frameSchema } from './schema.js';
import type { Frame } from './measures.js';
import { frameFault } from './measures.js';

/** The version of frame.json that this program writes. */
export const frameVersion = 1;

/** The text of frame.json: the frame as it was measured; everything else is worked out from it. */
export function frameText(frame: Frame): string {
  const fields = Object.keys(frameSchema.shape).filter((key) => Object.hasOwn(frame, key));
  const known = Object.fromEntries(fields.map((key) => [key, frame[key as keyof Frame]]));
  const object = { format: 'rondure-frame', version: frameVersion, ...known };
  return `${JSON.stringify(object, null, 2)}\n`;
}

/**
 * Reads the text of a frame.json.
 *
 * @param where how to name the file in an error, for instance its path
 * @throws RondureError `frame-not-ours`, `frame-too-new`, `frame-invalid`, `frame-measure-impossible`
 */
export function parseFrame(text: string, where: string): Frame {
  let given: unknown;
  try {
    given = parseJsonText(text.replace(/^\uFEFF/, ''));
  } catch (cause) {
    throw new RondureError('frame-not-ours', { where }, { cause });
  }
  if (!isRecord(given) || given.format !== 'rondure-frame' || isTooDeep(given)) {
    throw new RondureError('frame-not-ours', { where });
  }
  const { format: _format, version, ...fields } = given;
  if (typeof version === 'number' && version > frameVersion) {
    throw new RondureError('frame-too-new', { where, version });
  }
  const result = frameSchema.safeParse(fields);
  if (version === frameVersion && result.success) return result.data as Frame;
  const [first, ...rest] = result.success ? [] : result.error.issues;
  if (first && (first.path.length > 0 || first.code !== 'custom')) {
    throw new RondureError('frame-invalid', {
      where,
      path: pathText(first.path) || 'frame',
      problem: issueFault(first, fields),
      more: rest.length,
    });
  }
  if (first) requirePossible(fields as unknown as Frame);
  const problem = { kind: 'value', allowed: [String(frameVersion)] } as const;
  throw new RondureError('frame-invalid', { where, path: 'version', problem, more: 0 });
}

/** Whether a text is a frame.json of ours. */
export function isFrameText(text: string): boolean {
  try {
    const given: unknown = parseJsonText(text);
    return isRecord(given) && given.format === 'rondure-frame';
  } catch {
    return false;
  }
}

/**
 * Refuses measurements that no frame can have.
 *
 * @throws RondureError `frame-measure-impossible`
 */
export function requirePossible(frame: Frame): void {
  const fault = frameFault(frame);
  if (fault) throw new RondureError('frame-measure-impossible', fault);
}
