import { makeOutputs } from '../../src/core/pages/make-outputs.js';
import type { Files } from '../../src/core/pages/make-outputs.js';
import type { Pattern } from '../../src/core/pattern/pattern.js';
import { bundledFonts } from '../../src/node/font/fonts.js';
import type { Words } from '../../src/words/index.js';

/** The files of a pattern that are text: stands in for `patternFiles`, a hundred times as quick. */
export async function textFiles(pattern: Pattern, words: Words): Promise<Files> {
  const png = () => Promise.reject(new Error('no pictures here'));
  return makeOutputs(pattern, {
    words,
    fonts: await bundledFonts(),
    tools: { png },
    only: ({ name }) => /\.(json|txt|csv)$/.test(name),
  });
}
