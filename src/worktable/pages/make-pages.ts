import type { BlankName } from '../../core/pages/blank-outputs.js';
import type { FontFiles } from '../../core/pages/surface/font.js';
import { easternFonts, wantsEastern } from '../../core/pages/surface/page-fonts.js';
import type { EasternFont } from '../../core/pages/surface/page-fonts.js';
import type { Pattern } from '../../core/pattern/pattern.js';
import type { Language } from '../../words/pages/languages.js';
import { errorOf } from '../engine/failure.js';
import { Said } from '../said.js';
import type { PagesWish } from '../store/piece.js';
import type { GuideFacts, PagesAnswer, PagesAsk, PagesOf } from './messages.js';
import bold from '../../../fonts/NotoSans-Bold.ttf?url';
import regular from '../../../fonts/NotoSans-Regular.ttf?url';
import boldText from '../../../fonts/Literata-Bold.ttf?url';
import regularText from '../../../fonts/Literata-Regular.ttf?url';
import boldJP from '../../../fonts/NotoSansJP-Bold.ttf?url';
import regularJP from '../../../fonts/NotoSansJP-Regular.ttf?url';
import boldSC from '../../../fonts/NotoSansSC-Bold.ttf?url';
import regularSC from '../../../fonts/NotoSansSC-Regular.ttf?url';

const addresses = {
  '': { regular, bold },
  text: { regular: regularText, bold: boldText },
  JP: { regular: regularJP, bold: boldJP },
  SC: { regular: regularSC, bold: boldSC },
} as const;

const read = new Map<string, Promise<FontFiles>>();

/** Read when pages want them for the first time. */
function fontFiles(name: keyof typeof addresses): Promise<FontFiles> {
  let files = read.get(name);
  if (!files) {
    const bytes = async (address: string) =>
      new Uint8Array(await (await fetch(address)).arrayBuffer());
    const both = addresses[name];
    files = Promise.all([bytes(both.regular), bytes(both.bold)]).then(([r, b]) => ({
      regular: r,
      bold: b,
    }));
    files.catch(() => read.delete(name));
    read.set(name, files);
  }
  return files;
}

/** The eastern fonts that pages may want: by their language, or by a name or title in those scripts. */
async function easternFor(
  wish: PagesWish,
  patterns: readonly Pattern[],
  language: Language,
  more: readonly string[] = [],
) {
  const languages = [language, wish.second];
  const names = [
    wish.author,
    wish.licence,
    ...more,
    ...patterns.flatMap(({ title, beads }) => [title, ...beads.map(({ name }) => name)]),
  ];
  const all = wantsEastern(names.join(' '));
  const wanted = easternFonts.filter(
    (name) => all || languages.includes(name === 'JP' ? 'ja' : 'zh'),
  );
  const files = await Promise.all(wanted.map((name) => fontFiles(name)));
  return Object.fromEntries(wanted.map((name, n) => [name, files[n]])) as Partial<
    Record<EasternFont, FontFiles>
  >;
}

/** Asks a thread of its own, which is started for it and ended after it; hands over each answer until one is the last. */
async function ask(
  of: PagesOf,
  wish: PagesWish,
  spoken: Language,
  {
    isLast = () => true,
    stop,
  }: { isLast?: (answer: PagesAnswer) => boolean; stop?: AbortSignal } = {},
): Promise<PagesAnswer> {
  const { second } = wish;
  const language = wish.language ?? spoken;
  const two = second !== undefined && second !== language;
  const patterns = of.what === 'swatch-guide' ? [] : [of.pattern];
  const also = of.what === 'class' ? of.also : undefined;
  const worker = new Worker(new URL('./pages-worker.ts', import.meta.url), { type: 'module' });
  try {
    const asked: PagesAsk = {
      ...of,
      wish,
      languages: two ? [language, second] : [language],
      paper: wish.paper ?? 'a4',
      fonts: await fontFiles(''),
      text: await fontFiles('text'),
      eastern: await easternFor(
        wish,
        [...patterns, ...(also?.patterns ?? [])],
        language,
        also?.names,
      ),
    };
    const answer = await new Promise<PagesAnswer>((done, fail) => {
      worker.onmessage = ({ data }: MessageEvent<PagesAnswer>) => {
        if ('failed' in data || isLast(data)) done(data);
      };
      stop?.addEventListener('abort', () => fail(new DOMException('', 'AbortError')));
      worker.onerror = (event) => fail(new Said(event.message));
      worker.postMessage(asked);
    });
    if ('failed' in answer) {
      const { failed } = answer;
      throw failed.code ? errorOf(failed) : new Said(failed.message);
    }
    return answer;
  } finally {
    worker.terminate();
  }
}

/**
 * Makes a file of a pattern: the booklet as a PDF, or everything as one zip.
 *
 * @param spoken the language of the page, where no other is wished
 * @throws RondureError, Said
 */
export async function makePages(
  what: 'booklet' | 'zip',
  pattern: Pattern,
  wish: PagesWish,
  spoken: Language,
): Promise<Blob> {
  const answer = await ask({ what, pattern }, wish, spoken);
  const type = what === 'booklet' ? 'application/pdf' : 'application/zip';
  return new Blob(['bytes' in answer ? (answer.bytes as BlobPart) : ''], { type });
}

/**
 * Makes a file of an empty chart, in the language of the page.
 *
 * @throws RondureError, Said
 */
export async function makeBlankFile(
  name: BlankName,
  blank: Pattern,
  spoken: Language,
): Promise<Blob> {
  const answer = await ask({ what: name, pattern: blank }, {}, spoken);
  const type = name.endsWith('.pdf') ? 'application/pdf' : 'image/svg+xml';
  return new Blob(['bytes' in answer ? (answer.bytes as BlobPart) : ''], { type });
}

/**
 * Makes one PDF for a class: chart and work of each pattern, for each name.
 *
 * @throws RondureError, Said
 */
export async function makeClass(
  [first, ...patterns]: readonly Pattern[],
  names: readonly string[],
  wish: PagesWish,
  spoken: Language,
): Promise<Blob> {
  const answer = await ask(
    { what: 'class', pattern: first, also: { patterns, names } },
    wish,
    spoken,
  );
  return new Blob(['bytes' in answer ? (answer.bytes as BlobPart) : ''], {
    type: 'application/pdf',
  });
}

/**
 * Makes the guide to a swatch, in the first language of the pages and on their paper.
 *
 * @throws RondureError, Said
 */
export async function makeSwatchGuide(
  guide: GuideFacts,
  { language, paper }: PagesWish,
  spoken: Language,
): Promise<Blob> {
  const answer = await ask({ what: 'swatch-guide', guide }, { language, paper }, spoken);
  return new Blob(['bytes' in answer ? (answer.bytes as BlobPart) : ''], {
    type: 'application/pdf',
  });
}

/** The lists as texts, and the chart as a drawing, by the names of their files. */
export async function makeLists(
  pattern: Pattern,
  wish: PagesWish,
  spoken: Language,
): Promise<Readonly<Record<string, string>>> {
  const answer = await ask({ what: 'lists', pattern }, wish, spoken);
  return 'lists' in answer ? answer.lists : {};
}

/**
 * Pictures of the booklet's pages, each as soon as it is drawn.
 *
 * @throws RondureError, Said; a DOMException `AbortError` when it was stopped
 */
export async function makePictures(
  pattern: Pattern,
  wish: PagesWish,
  spoken: Language,
  shown: (png: Blob, page: number, pages: number) => void,
  stop: AbortSignal,
): Promise<void> {
  const take = (answer: PagesAnswer) => {
    if (!('png' in answer)) return true;
    const { png, page, pages } = answer;
    if (!stop.aborted) shown(new Blob([png as BlobPart], { type: 'image/png' }), page, pages);
    return page === pages;
  };
  await ask({ what: 'pictures', pattern }, wish, spoken, { isLast: take, stop });
}
