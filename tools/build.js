// Builds dist/ from src/: compiles the types away, then publishes the JSON Schema of the pattern.
import { execFileSync } from 'node:child_process';
import { renameSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';

const top = new URL('../', import.meta.url);
const tsc = createRequire(import.meta.url).resolve('typescript/bin/tsc');
const made = new URL(`.tmp/dist-${process.pid}/`, top);
try {
  execFileSync(
    process.execPath,
    [tsc, '-p', fileURLToPath(new URL('tsconfig.json', top)), '--outDir', fileURLToPath(made)],
    { stdio: 'inherit' },
  );
  const { patternJsonSchema } = await import(new URL('core/pattern/schema.js', made).href);
  writeFileSync(
    new URL('pattern.schema.json', made),
    JSON.stringify(patternJsonSchema(), null, 2) + '\n',
  );
  const { swatchJsonSchema } = await import(new URL('core/swatch/schema.js', made).href);
  writeFileSync(
    new URL('swatch.schema.json', made),
    JSON.stringify(swatchJsonSchema(), null, 2) + '\n',
  );
  // A program that runs meanwhile finds the old build or the new one.
  rmSync(new URL('dist/', top), { recursive: true, force: true });
  renameSync(made, new URL('dist/', top));
} finally {
  rmSync(made, { recursive: true, force: true });
}
