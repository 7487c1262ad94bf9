import type * as z from 'zod';
import type { PlainFault, ValueFault } from '../words/en/pattern.js';

type Issue = z.core.$ZodIssue;

export function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** Engines quote parts of the text in their message: keep it to one short line. */
export function shortened(message: string): string {
  const line = message.replace(/[\p{Cc}\s]+/gu, ' ').trim();
  return line.length > 120 ? `${line.slice(0, 119)}…` : line;
}

/** `panels[0].rounds[3]`: the way the place is written in a program. */
export function pathText(path: readonly PropertyKey[]): string {
  return path
    .map((step) => (typeof step === 'number' ? `[${step}]` : `.${String(step)}`))
    .join('')
    .replace(/^\./, '');
}

/** What is wrong with one value. */
export function issueFault(issue: Issue, given: unknown): ValueFault {
  switch (issue.code) {
    case 'unrecognized_keys':
      return { kind: 'unknown-names', names: issue.keys.slice(0, 5).map(shortened) };
    case 'invalid_type':
      return isMissing(given, issue.path)
        ? { kind: 'missing' }
        : { kind: 'type', expected: issue.expected };
    case 'invalid_value':
      return { kind: 'value', allowed: issue.values.map((value) => JSON.stringify(value)) };
    case 'too_small':
      return { kind: 'too-small', least: String(issue.minimum), of: kindOf(issue.origin) };
    case 'too_big':
      return { kind: 'too-big', most: String(issue.maximum), of: kindOf(issue.origin) };
    case 'custom':
      return issue.params as ValueFault;
    case 'invalid_format':
      return { kind: issue.message as PlainFault };
    default:
      return { kind: 'one-of-several' };
  }
}

function kindOf(origin: string): 'number' | 'text' | 'list' {
  if (origin === 'string') return 'text';
  return origin === 'array' ? 'list' : 'number';
}

function isMissing(given: unknown, path: readonly PropertyKey[]): boolean {
  let value = given as Record<PropertyKey, unknown> | undefined;
  for (const step of path) value = value?.[step] as typeof value;
  return value === undefined;
}
