import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

// The public surface: what programs may rely on. A change here is a change for them.
const top = fileURLToPath(new URL('../', import.meta.url));

test.each([
  ['.', 'core'],
  ['./node', 'node'],
])('the exports of %s are these', async (entry, layer) => {
  const { exports } = JSON.parse(readFileSync(`${top}package.json`, 'utf8'));
  expect(exports[entry].default).toBe(`./dist/${layer}/index.js`);
  const module = await import(new URL(`../dist/${layer}/index.js`, import.meta.url).href);
  await expect(Object.keys(module).sort().join('\n') + '\n').toMatchFileSnapshot(
    `snapshots/exports-${layer}.txt`,
  );
  const types = readFileSync(`${top}dist/${layer}/index.d.ts`, 'utf8');
  expect(types).toContain('export');
});

test('the JSON Schema of the pattern is published and names its parts', () => {
  const schema = JSON.parse(readFileSync(`${top}dist/pattern.schema.json`, 'utf8'));
  expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
  expect(schema.additionalProperties).toBe(false);
  expect(schema.required).toEqual(['format', 'version', 'title', 'shape', 'beads', 'panels']);
  expect(schema.properties.format.const).toBe('rondure-pattern');
  expect(schema.properties.shape.properties.wedges).toMatchObject({ minimum: 3, maximum: 12 });
});

test('the JSON Schema of the swatch is published and names its parts', () => {
  const schema = JSON.parse(readFileSync(`${top}dist/swatch.schema.json`, 'utf8'));
  expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
  expect(schema.additionalProperties).toBe(false);
  expect(schema.required).toEqual(['format', 'version', 'worked', 'lies', 'measured']);
  expect(schema.properties.format.const).toBe('rondure-swatch');
});
