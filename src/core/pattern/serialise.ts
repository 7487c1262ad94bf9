import {
  beadSchema,
  choiceSchema,
  panelSchema,
  patternSchema,
  pictureSchema,
  placeSchema,
  shapeSchema,
  threadSchema,
} from './schema.js';
import { frameSchema } from '../purse/frame/schema.js';
import { measuredSchema, swatchSchema, workedSchema } from '../swatch/schema.js';
import { handLaidSchema, laidStitchesSchema, wishSchema } from './wish-schema.js';
import type { Pattern } from './pattern.js';

const laidKeys = Object.keys(laidStitchesSchema.shape);

/** Order of the keys of each part, by its path; other objects keep the order they have. */
const keyOrder: Record<string, readonly string[]> = {
  '': Object.keys(patternSchema.shape),
  '.shape': Object.keys(shapeSchema.shape),
  '.beads[]': Object.keys(beadSchema.shape),
  '.panels[]': Object.keys(panelSchema.shape),
  '.panels[].picture': Object.keys(pictureSchema.shape),
  '.panels[].picture.place': Object.keys(placeSchema.shape),
  '.choice': Object.keys(choiceSchema.shape),
  '.swatch': Object.keys(swatchSchema.shape),
  '.swatch.worked': Object.keys(workedSchema.shape),
  '.swatch.measured': Object.keys(measuredSchema.shape),
  '.frame': Object.keys(frameSchema.shape),
  '.thread': Object.keys(threadSchema.shape),
  '.wish': Object.keys(wishSchema.shape),
  '.wish.shape': Object.keys(wishSchema.shape.shape.shape),
  '.wish.place': Object.keys(wishSchema.shape.place.shape),
  '.wish.backPlace': Object.keys(wishSchema.shape.place.shape),
  '.wish.laid': Object.keys(handLaidSchema.shape),
  '.wish.laid.beads[]': Object.keys(beadSchema.shape),
  '.wish.laid.front[]': laidKeys,
  '.wish.laid.back[]': laidKeys,
};

/**
 * The text of pattern.json: two spaces a level, one round a line, keys always in the same order,
 * LF, a newline at the end. `parsePattern` reads it back to the same pattern.
 */
export function patternText(pattern: Pattern): string {
  return `${printed(pattern, '', '')}\n`;
}

function printed(value: unknown, path: string, indent: string): string {
  if (typeof value === 'number') return plainNumber(value);
  if (typeof value !== 'object' || value === null) return JSON.stringify(value) ?? 'null';
  const inner = `${indent}  `;
  if (Array.isArray(value)) {
    if (value.length === 0) return '[]';
    if (value.every((one) => typeof one === 'number')) {
      return `[${value.map(plainNumber).join(', ')}]`;
    }
    const items = value.map((item) => inner + printed(item, `${path}[]`, inner));
    return `[\n${items.join(',\n')}\n${indent}]`;
  }
  const fields = value as Record<string, unknown>;
  const known = keyOrder[path] ?? [];
  const keys = [
    ...known.filter((key) => Object.hasOwn(fields, key)),
    ...Object.keys(fields).filter((key) => !known.includes(key)),
  ].filter((key) => fields[key] !== undefined);
  if (keys.length === 0) return '{}';
  const lines = keys.map(
    (key) => `${inner}${JSON.stringify(key)}: ${printed(fields[key], `${path}.${key}`, inner)}`,
  );
  return `{\n${lines.join(',\n')}\n${indent}}`;
}

/** A number as plain decimals that read back to the same number: 1e-7 becomes 0.0000001. */
function plainNumber(value: number): string {
  const text = JSON.stringify(value);
  const parts = /^(-?)(\d)(?:\.(\d+))?e([+-]\d+)$/.exec(text);
  if (!parts) return text;
  const [, sign, whole, fraction = '', exponent] = parts;
  const digits = whole + fraction;
  const point = 1 + Number(exponent);
  if (point <= 0) return `${sign}0.${'0'.repeat(-point)}${digits}`;
  return sign + digits.padEnd(point, '0');
}
