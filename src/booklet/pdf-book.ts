import { joined } from '../core/bytes.js';
import type { Fonts } from '../core/pages/surface/font.js';
import { asGrey } from '../core/pages/panel/grey-fills.js';
import { claimStandards } from './pdf-standards.js';
import { plainFont } from './plain-font.js';
import type { StructureNode } from './structure.js';
import { pointsPerMm } from './pdf-content.js';
import { PdfSurface } from './pdf-surface.js';

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
  /** Whether it will have a structure. */
  readonly tagged?: boolean;
  /** Day of the edition, YYYY-MM-DD. */
  readonly date?: string | undefined;
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
  /** Names the page begun last in the reader's list of contents, below a group where it is given. */
  bookmark(name: string, group?: string): void;
  /** Draws a part of the document, the foot of a page, or ornament where there is neither. */
  marked(node: StructureNode | 'foot' | undefined, draw: () => void): void;
  /** The whole document, with its structure where it has one. */
  finish(root?: StructureNode): Promise<Uint8Array>;
}

/** Begins a PDF without pages. The PDF writer is large: it is loaded when first needed. */
export async function pdfBook(options: PdfOptions): Promise<PdfBook> {
  const { default: PDFDocument } = await import('pdfkit');
  const day = options.date === undefined ? fixedDate : new Date(`${options.date}T00:00:00Z`);
  const doc = new PDFDocument({
    autoFirstPage: false,
    pdfVersion: '1.7',
    lang: options.language,
    displayTitle: true,
    tagged: options.tagged ?? false,
    // Without this the writer looks for a font of its own among its files.
    font: null as unknown as string,
    info: {
      Title: options.title,
      Subject: options.subject,
      ...(options.author !== undefined && { Author: options.author }),
      Producer: options.creator ?? 'Rondure',
      Creator: options.creator ?? 'Rondure',
      CreationDate: day,
      ModDate: day,
    },
  });
  if (options.tagged) {
    claimStandards(doc, { ...options, creator: options.creator ?? 'Rondure', day });
  }
  const registered = new Set<string>();
  let used = '';
  function useFont(file: string): void {
    if (file === used) return;
    if (!registered.has(file)) doc.registerFont(file, bytes(plainFont(options.fonts.file(file))));
    registered.add(file);
    doc.font(file);
    used = file;
  }
  let surface: PdfSurface | undefined;
  const groups = new Map<string, Outline>();
  const contents: Contents = new Map();
  return {
    page(widthMm, heightMm) {
      surface?.content.flush();
      doc.addPage({ size: [widthMm * pointsPerMm, heightMm * pointsPerMm], margin: 0 });
      const printed = options.grey ? asGrey : undefined;
      return (surface = new PdfSurface(doc, useFont, widthMm, heightMm, printed));
    },
    bookmark(name, group) {
      if (group === undefined) return void doc.outline.addItem(name);
      if (!groups.has(group)) groups.set(group, doc.outline.addItem(group));
      groups.get(group)!.addItem(name);
    },
    marked(node, draw) {
      surface?.content.flush();
      if (node === undefined) doc.markContent('Artifact', { type: 'Layout' });
      else if (node === 'foot') doc.markContent('Artifact', { type: 'Pagination' });
      else {
        const content = doc.markStructureContent(node.type);
        contents.set(node, [...(contents.get(node) ?? []), content]);
      }
      draw();
      surface?.content.flush();
      doc.endMarkedContent();
    },
    async finish(root) {
      surface?.content.flush();
      if (root !== undefined) doc.addStructure(elementOf(doc, root, contents));
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

type Outline = ReturnType<PDFKit.PDFDocument['outline']['addItem']>;
type Contents = Map<StructureNode, PDFKit.PDFStructureContent[]>;

/** A part of the document with everything in it; what holds nothing is left out. */
function elementOf(
  doc: PDFKit.PDFDocument,
  node: StructureNode,
  contents: Contents,
): PDFKit.PDFStructureElement {
  const { alt, language, scope } = node.facts;
  const options = {
    ...(alt !== undefined && { alt }),
    ...(language !== undefined && { lang: language }),
    ...(scope !== undefined && { scope }),
  };
  const children = node.children
    .filter((child) => holdsSomething(child, contents))
    .map((child) => elementOf(doc, child, contents));
  return doc.struct(node.type, options, [...(contents.get(node) ?? []), ...children]);
}

const holdsSomething = (node: StructureNode, contents: Contents): boolean =>
  contents.has(node) ||
  node.type === 'TD' ||
  node.children.some((child) => holdsSomething(child, contents));

type FontSource = PDFKit.Mixins.PDFFontSource;
const bytes = (file: Uint8Array): FontSource => file as FontSource;
