import { swatchGuideCreator, swatchGuidePdf } from '../../booklet/swatch-guide-pdf.js';
import { RondureError } from '../../core/errors.js';
import { swatchGuideMark, swatchGuideSvg } from '../../core/pages/swatch/swatch-guide-svg.js';
import { defaultSize, sizeOf } from '../../core/beads/palette/sizes.js';
import { completeShape, stitchCount } from '../../core/panel/shape.js';
import { rimWedge } from '../../core/swatch/model.js';
import { fontsForPages } from '../../node/font/fonts.js';
import { checkFileFree, writeOutputFile } from '../../node/output/output-file.js';
import { wordsIn } from '../../words/index.js';
import type { Words } from '../../words/index.js';
import type { Io } from '../run/io.js';
import type { SwatchOptions } from '../options/swatch-options.js';

/** `swatch --guide`: prints how to make and measure one. The file's ending says how. */
export async function writeGuide(options: SwatchOptions, words: Words, io: Io): Promise<void> {
  const { output = 'guide.svg', dryRun, quiet, json, rounds = 10, markedWedge } = options;
  const kind = /\.(svg|pdf)$/i.exec(output)?.[1].toLowerCase();
  if (kind === undefined) {
    const expected = { kind: 'name-of-svg-or-pdf' } as const;
    throw new RondureError('option-value', { option: '--output', got: output, expected });
  }
  const writing = {
    force: options.force === true,
    isOurs: isGuide,
  };
  if (!dryRun) await checkFileFree(output, writing);
  const { diameterMm, name } = sizeOf(options.size ?? defaultSize);
  const shape = completeShape({
    wedges: options.wedges,
    rounds,
    increase: options.increase,
    construction: options.construction,
    hand: options.hand,
    beadsFace: options.beadsFace,
    ...(options.outline && { outline: options.outline }),
    beadDiameterMm: options.beadMm ?? diameterMm,
  });
  const toRound = options.toRound ?? rounds;
  const fromRound = options.fromRound ?? Math.min(2, toRound - 1);
  const { paper, language = 'en-GB' } = options;
  const { words: said } = await wordsIn([language]);
  const fonts = await fontsForPages(language, []);
  const guide = { shape, size: name, fromRound, toRound, markedWedge, words: said, fonts };
  const content =
    kind === 'svg'
      ? swatchGuideSvg(guide, paper)
      : (await swatchGuidePdf(guide, paper, language)).bytes;
  if (!dryRun) {
    io.guard?.(true);
    try {
      await writeOutputFile(output, content, { ...writing, signal: io.signal });
    } finally {
      io.guard?.(false);
    }
  }
  const file = dryRun ? undefined : output;
  if (json) {
    const object = { schema: 'rondure-swatch-guide', version: 1, file: file ?? null, paper };
    io.out(JSON.stringify(object, null, 2) + '\n');
  } else if (!quiet) {
    const beads = stitchCount(shape);
    const facts = { ...shape, ...guide, rimWedge: rimWedge(shape.wedges), beads };
    io.out(`${words.swatch.guideMade({ file, paper })}\n${words.swatch.guideThen(facts)}\n`);
  }
}

/** Whether a file is a guide of ours, which may be replaced. */
function isGuide(older: Uint8Array): boolean {
  const text = new TextDecoder('latin1').decode(older);
  if (!text.startsWith('%PDF')) return text.includes(`id="${swatchGuideMark}"`);
  // What the PDF says about itself stands in it as plain text too (XMP); until 2026 by its title.
  const producer = (name: string) => text.includes(`<pdf:Producer>${name}<`);
  return (
    producer(swatchGuideCreator) || (producer('Rondure') && text.includes('>Measure your stitch<'))
  );
}
