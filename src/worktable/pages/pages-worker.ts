import '../jitless.js';
import { blankPdf } from '../../booklet/blank-pdf.js';
import { bookletPdf } from '../../booklet/booklet-pdf.js';
import { swatchGuidePdf } from '../../booklet/swatch-guide-pdf.js';
import { makeBlank } from '../../core/pages/blank-outputs.js';
import type { BlankName } from '../../core/pages/blank-outputs.js';
import { classPdf } from '../../booklet/class-pdf.js';
import { shoppingText } from '../../core/pages/lists/shopping-text.js';
import type { PanelSheet } from '../../core/pages/panel/sheet.js';
import { loadFonts } from '../../core/pages/surface/font.js';
import { fontChoiceForPages } from '../../core/pages/surface/page-fonts.js';
import { en, wordsIn } from '../../words/index.js';
import type { BookletFacts } from '../../booklet/facts.js';
import { photoOf } from './cover-photo.js';
import { bookletPictures } from './page-pictures.js';
import { patternFiles, patternTexts } from './pattern-files.js';
import { failureOf } from '../engine/failure.js';
import type { PagesAnswer, PagesAsk } from './messages.js';
import { zipOf } from './zip.js';

const send = (answer: PagesAnswer) => (self as unknown as Worker).postMessage(answer);

self.onmessage = async ({ data }: MessageEvent<PagesAsk>) => {
  try {
    for await (const answer of make(data)) send(answer);
  } catch (error) {
    send({ failed: failureOf(error) });
  }
};

/** Line breaking by the Unicode rules (UAX #14), for scripts without spaces. */
async function unicodeBreaks() {
  const { default: LineBreaker } = await import('linebreak');
  return (text: string) => {
    const breaker = new LineBreaker(text);
    const places: number[] = [];
    for (let next = breaker.nextBreak(); next; next = breaker.nextBreak())
      places.push(next.position);
    return places;
  };
}

async function* make(ask: PagesAsk): AsyncGenerator<PagesAnswer> {
  const { languages, paper, wish, fonts, text, eastern } = ask;
  const read = (name: 'JP' | 'SC') => eastern[name] ?? fonts;
  const choice = fontChoiceForPages(languages[0], [], read, await unicodeBreaks());
  const further = choice.further?.filter(({ name }) => name.toUpperCase() in eastern) ?? [];
  const lettering = loadFonts(fonts.regular, fonts.bold, { ...choice, further, text });
  const said = await wordsIn(languages);
  if (ask.what === 'swatch-guide') {
    const guide = { ...ask.guide, words: said.words, fonts: lettering };
    yield { bytes: (await swatchGuidePdf(guide, paper, languages[0])).bytes };
    return;
  }
  const { what, pattern } = ask;
  // The command line's lists name the terms of both Englishes.
  const lists = languages[0].startsWith('en') ? en : said.words;
  if (what === 'lists') {
    const files = await patternTexts(pattern, lists, lettering);
    files.set('shopping.txt', shoppingText(pattern, lists, { pieces: wish.pieces ?? 1 }));
    yield { lists: Object.fromEntries(files) as Record<string, string> };
    return;
  }
  if (what.startsWith('blank.')) {
    const name = what as BlankName;
    const spoken = languages[0].startsWith('en') ? 'en' : languages[0];
    const tools = { pdf: (sheet: PanelSheet) => blankPdf(sheet, spoken) };
    const { files } = await makeBlank(pattern, {
      words: lists,
      fonts: lettering,
      tools,
      only: [name],
    });
    yield { bytes: files.get(name)! };
    return;
  }
  const { grey, large, otherHand, author, licence, date, contact, time, photo } = wish;
  const facts: BookletFacts = {
    pattern,
    ...said,
    languages,
    fonts: lettering,
    edition: {
      ...(grey && { grey: true }),
      ...(large && { large: true }),
      ...(otherHand && { otherHand }),
    },
    ...(author && { author }),
    ...(licence && { licence }),
    ...(date && { date }),
    ...(contact && { contact }),
    ...(time && { time }),
    ...(photo && { photo: await photoOf(photo, grey === true) }),
    version: __VERSION__,
  };
  if (what === 'pictures') {
    yield* bookletPictures(facts, paper);
    return;
  }
  if (ask.what === 'class') {
    const { patterns, names } = ask.also;
    const handOut = { patterns: [pattern, ...patterns], names };
    yield { bytes: (await classPdf(facts, handOut, paper)).bytes };
    return;
  }
  const { bytes } = await bookletPdf(facts, paper);
  if (what === 'zip') {
    const files = await patternFiles(pattern, lists, lettering);
    files.set('booklet.pdf', bytes);
    yield { bytes: zipOf(files) };
  } else yield { bytes };
}
