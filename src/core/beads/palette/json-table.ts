import { RondureError } from '../../errors.js';
import { isTooDeep, parseJsonText } from '../../input-limits.js';
import { columnNamed } from './columns.js';
import type { Column } from './columns.js';
import { linesOfEntries } from './json-lines.js';
import { mostBeads, tooManyBeads } from './too-long.js';
import type { Table, TableRow } from './table-rows.js';

/** Whether a text can only be JSON. */
export function isJson(text: string): boolean {
  return /^\s*(\[\s*[[{"\]]|\{\s*["}])/.test(text);
}

/** Keys of a pattern's beads that a palette has no use for. */
const passedOver = new Set(['letter', 'filled']);

/**
 * Reads JSON: a list of beads (records with the columns' names as keys, or colours alone), or
 * anything that holds such a list as `beads`, for instance a pattern. `lab` may be a list of three.
 *
 * @throws RondureError `palette-not-json`, `palette-no-beads-in-json`, `palette-too-long`
 */
export function jsonTable(text: string, where: string): Table {
  const given = parsed(text, where);
  if (isTooDeep(given)) {
    throw new RondureError('palette-not-json', { where, detail: { kind: 'too-deep' } });
  }
  const list = listIn(given);
  if (!list) throw new RondureError('palette-no-beads-in-json', { where });
  if (list.length > mostBeads) throw tooManyBeads(where);
  const lines = linesOfEntries(text);
  const at = new Map<Column, number>();
  const ignored = new Set<string>();
  const place = (column: Column) => {
    if (!at.has(column)) at.set(column, at.size);
    return at.get(column)!;
  };
  place('hex');
  const rows = list.map((entry, index): TableRow => {
    const line = lines[index] ?? 1;
    const cells: string[] = [];
    const given = typeof entry === 'string' ? { hex: entry } : entry;
    if (!isRecord(given)) {
      const got = JSON.stringify(entry);
      return { line, cells, problem: { column: 'hex', got, expected: { kind: 'bead' } } };
    }
    let problem: TableRow['problem'];
    for (const [key, value] of fieldsOf(given)) {
      const column = columnNamed(key);
      if (!column) {
        if (!passedOver.has(key)) ignored.add(key.replace(/[\p{Cc}\s]+/gu, ' ').trim());
      } else if (typeof value === 'string' || typeof value === 'number') {
        cells[place(column)] ??= String(value);
      } else if (value !== null) {
        problem ??= { column, got: JSON.stringify(value), expected: { kind: 'text-or-number' } };
      }
    }
    const filled = Array.from(cells, (cell) => cell ?? '');
    return problem ? { line, cells: filled, problem } : { line, cells: filled };
  });
  const columns = { at, ignored: [...ignored].filter((key) => key !== ''), header: [] };
  return { format: 'json', columns, decimalComma: true, rows };
}

function parsed(text: string, where: string): unknown {
  try {
    return parseJsonText(text);
  } catch (cause) {
    const message = cause instanceof Error ? cause.message : '';
    const detail = message.replace(/[\p{Cc}\s]+/gu, ' ').slice(0, 120);
    throw new RondureError('palette-not-json', { where, detail }, { cause });
  }
}

function listIn(value: unknown): unknown[] | undefined {
  const list: unknown = isRecord(value) ? (value.beads ?? value.colors ?? value.colours) : value;
  return Array.isArray(list) ? list : undefined;
}

function fieldsOf(bead: Record<string, unknown>): [string, unknown][] {
  return Object.entries(bead).flatMap(([key, value]): [string, unknown][] => {
    if (key.toLowerCase() === 'rgb' && Array.isArray(value)) {
      return [['hex', `rgb(${value.join(' ')})`]];
    }
    if (key.toLowerCase() !== 'lab' || !Array.isArray(value)) return [[key, value]];
    const list = value as unknown[];
    return ['L', 'a', 'b'].map((name, index) => [name, list[index] ?? '']);
  });
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
