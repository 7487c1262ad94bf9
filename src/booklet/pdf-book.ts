import type { Fonts } from '../core/draw/font.js';
import { asGrey } from '../core/draw/grey-fills.js';
import { PdfSurface, pointsPerMm } from './pdf-surface.js';

/** What a PDF says about itself, and the faces it is lettered with. */
export interface PdfOptions {
  /** Shown in the window's title. */
  readonly title: string;
  readonly subject: string;
  /** Language of the text (BCP 47), for whoever has it read aloud. */
  readonly language: string;
  readonly author?: string | undefined;
  /** What made it; tells one kind of our PDFs from another. */
  readonly creator?: string;
  /** Whether it is for a printer without colours. */
  readonly grey?: boolean | undefined;
  /** The faces that the pages are lettered with. */
  readonly fonts: Fonts;
}

/** The same input must give the same bytes, so every PDF claims the same date. */
const fixedDate = new Date(Date.UTC(2000, 0, 1));

/** A PDF in the making: pages are drawn one after the other. */
export interface PdfBook {
  /** Begins a page; drawing on an earlier one is over. */
  page(widthMm: number, heightMm: number): PdfSurface;
  /** Names the page begun last in the reader's list of contents. */
  bookmark(name: string): void;
  /** The whole document. */
  finish(): Promise<Uint8Array>;
}

/** Begins a PDF without pages. The PDF writer is large: it is loaded when first needed. */
export async function pdfBook(options: PdfOptions): Promise<PdfBook> {
  const { default: PDFDocument } = await import('pdfkit');
  const doc = new PDFDocument({
    autoFirstPage: false,
    pdfVersion: '1.7',
    lang: options.language,
    displayTitle: true,
    // Without this the writer looks for a font of its own among its files.
    font: null as unknown as string,
    info: {
      Title: options.title,
      Subject: options.subject,
      ...(options.author !== undefined && { Author: options.author }),
      Producer: options.creator ?? 'Rondure',
      Creator: options.creator ?? 'Rondure',
      CreationDate: fixedDate,
    },
  });
  const registered = new Set<string>();
  function useFont(file: string): void {
    if (!registered.has(file)) doc.registerFont(file, bytes(options.fonts.file(file)));
    registered.add(file);
    doc.font(file);
  }
  return {
    page(widthMm, heightMm) {
      doc.addPage({ size: [widthMm * pointsPerMm, heightMm * pointsPerMm], margin: 0 });
      return new PdfSurface(doc, useFont, widthMm, heightMm, options.grey ? asGrey : undefined);
    },
    bookmark(name) {
      doc.outline.addItem(name);
    },
    async finish() {
      const chunks: Uint8Array[] = [];
      const ended = new Promise<void>((resolve, reject) => {
        doc.on('data', (chunk: Uint8Array) => void chunks.push(chunk));
        doc.on('end', resolve);
        doc.on('error', reject);
      });
      doc.end();
      await ended;
      return joined(chunks);
    },
  };
}

type FontSource = PDFKit.Mixins.PDFFontSource;
const bytes = (file: Uint8Array): FontSource => file as FontSource;

function joined(chunks: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(chunks.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const chunk of chunks) {
    whole.set(chunk, at);
    at += chunk.length;
  }
  return whole;
}
