// npm run bench: every measured bar, as a ratio against a peer or limit in the same run. Exits
// with 1 when a bar is missed. Needs a build (npm ci makes one).
import { readdirSync } from 'node:fs';

const parts = [
  'kernel.js',
  'follow.js',
  'choice.js',
  'rivals.js',
  'stock.js',
  'outlines.js',
  'details.js',
  'booklet.js',
  'whole.js',
];
const here = readdirSync(new URL('.', import.meta.url));
let missed = 0;
for (const part of parts) {
  if (!here.includes(part)) throw new Error(`bench/${part} is missing`);
  process.stderr.write(`${part} …\n`);
  const { run } = await import(new URL(part, import.meta.url).href);
  for (const { name, value, bar, ok } of await run()) {
    console.log(`${ok ? 'met   ' : 'MISSED'}  ${value.toFixed(3).padStart(9)}  (${bar})  ${name}`);
    if (!ok) missed += 1;
  }
}
process.exitCode = missed > 0 ? 1 : 0;
