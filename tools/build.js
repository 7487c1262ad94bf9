// Builds dist/ from src/: compiles the types away, then publishes the JSON Schema of the pattern.
import { execFileSync } from 'node:child_process';
import { rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';

const top = new URL('../', import.meta.url);
const tsc = createRequire(import.meta.url).resolve('typescript/bin/tsc');
rmSync(new URL('dist/', top), { recursive: true, force: true });
execFileSync(process.execPath, [tsc, '-p', fileURLToPath(new URL('tsconfig.json', top))], {
  stdio: 'inherit',
});
const { patternJsonSchema } = await import(new URL('dist/core/pattern/schema.js', top).href);
writeFileSync(
  new URL('dist/pattern.schema.json', top),
  JSON.stringify(patternJsonSchema(), null, 2) + '\n',
);
