import type { Words } from '../../words/index.js';
import { layPanel } from '../panel/lay.js';
import { panelFile } from '../pattern/panel-file.js';
import type { Pattern } from '../pattern/pattern.js';
import { patternText } from '../pattern/serialise.js';
import { chartSvg } from './chart/chart.js';
import type { OutputFacts, OutputTools } from './output-facts.js';
import { outputs } from './outputs.js';
import type { Output, OutputFile } from './outputs.js';
import type { Fonts } from './surface/font.js';

/** Every file by its name. */
export type Files = Map<string, Uint8Array | string>;

/** What files are made with besides their pattern. */
export interface OutputMeans {
  readonly words: Words;
  readonly fonts: Fonts;
  readonly tools: OutputTools;
  /** Told before each slow step, for a line of progress. */
  readonly said?: (step: 'drawing' | 'rendering') => void;
  /** Which of `outputs` are wanted; all when absent. */
  readonly only?: (file: OutputFile) => boolean;
}

/**
 * Every file of a pattern, by name, made from the pattern alone. Those of a second panel begin with
 * `back-`; two panels share the materials, and sewing.txt tells how they are sewn together.
 */
export async function makeOutputs(pattern: Pattern, means: OutputMeans): Promise<Files> {
  const { said, only = () => true } = means;
  const json = once(() => patternText(pattern));
  const files: Files = new Map();
  const wanted = outputs.filter(only);
  const whole = wanted.filter(
    ({ of }) => of === 'pattern' || (of === 'two panels' && pattern.panels.length > 1),
  );
  await put(files, whole, factsOf(pattern, 0, json, means), (name) => name);
  const own = wanted.filter(({ of }) => of === 'panel');
  for (const panel of pattern.panels.keys()) {
    said?.('drawing');
    const facts = factsOf(pattern, panel, json, means);
    await put(files, own, facts, (name) => panelFile(panel, name), said);
  }
  return files;
}

/** Makes files one after the other, while other threads draw and pack the pictures among them. */
async function put(
  files: Files,
  list: readonly OutputFile[],
  facts: OutputFacts,
  nameOf: (name: string) => string,
  said?: OutputMeans['said'],
): Promise<void> {
  const made = new Map<OutputFile, Output>();
  for (const file of inOrderOf(list)) {
    if (file.step) said?.(file.step);
    made.set(file, file.make(facts));
  }
  const contents = await Promise.all(list.map((file) => made.get(file)));
  contents.forEach((content, n) => {
    if (content !== undefined) files.set(nameOf(list[n].name), content);
  });
}

/** What other threads have to do with first, the rest as it stands. */
function inOrderOf(list: readonly OutputFile[]): OutputFile[] {
  const at = ({ begun }: OutputFile): number => begun ?? list.length + 3;
  return [...list].sort((one, other) => at(one) - at(other));
}

function factsOf(
  pattern: Pattern,
  panel: number,
  json: () => string,
  { words, fonts, tools }: OutputMeans,
): OutputFacts {
  const sheet = once(() => {
    const { startDegrees } = pattern.panels[panel];
    const { geometry, footprints } = layPanel(pattern.shape, { startDegrees });
    return { pattern, panel, geometry, footprints, words, fonts };
  });
  const chart = once(() => chartSvg(sheet()));
  return { pattern, panel, words, fonts, tools, sheet, chart, json };
}

function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => (made ??= { value: make() }).value;
}
