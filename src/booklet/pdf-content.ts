/** Points in a millimetre: a point is 1/72 inch (ISO 32000-1, 8.3.2.3). */
export const pointsPerMm = 72 / 25.4;

/** Points, to a ten-thousandth: 0.02 micrometres off at most, and shorter to write. */
export const pt = (mm: number): number => Math.round(mm * pointsPerMm * 1e4) / 1e4;

/** A font of the writer. */
interface WriterFont {
  readonly id: string;
  /** The glyphs of a text in the font's subset, four hexadecimal digits each. */
  encode(text: string): [hex: string[], positions: unknown[]];
  widthOfString(text: string, size: number): number;
  ref(): unknown;
}

/** The parts of the writer that its types leave out. */
interface Writer {
  readonly page: {
    write(bytes: Uint8Array): void;
    readonly fonts: Record<string, unknown>;
  };
  readonly _font: WriterFont;
}

/** What holds until it is changed (ISO 32000-1, 8.4.1): operators that change nothing are left out. */
interface State {
  readonly fill: string;
  readonly stroke: string;
  readonly line: string;
}

/** As a page begins: black, and nothing known of lines. */
const atFirst: State = { fill: '', stroke: '', line: '' };

/** What every font knows of letters, so that each is looked up once. */
const letters = new WeakMap<WriterFont, Map<string, string>>();
const widths = new WeakMap<WriterFont, Map<string, number>>();

function keptOf<T>(all: WeakMap<WriterFont, Map<string, T>>, font: WriterFont): Map<string, T> {
  let kept = all.get(font);
  if (!kept) all.set(font, (kept = new Map()));
  return kept;
}

/**
 * The operators of one page (ISO 32000-1, annex A), handed to the writer many at a time: its own
 * calls, one a line, took most of the time that a booklet is drawn in. Lengths in millimetres from the
 * top left corner, as the writer has turned the page.
 */
export class PdfContent {
  private operators: string[] = [];
  private state = atFirst;
  private readonly outer: State[] = [];

  constructor(private readonly doc: PDFKit.PDFDocument) {}

  private get writer(): Writer {
    return this.doc as unknown as Writer;
  }

  /** Hands over what there is; to be called before the writer itself writes to the page. */
  flush(): void {
    if (this.operators.length === 0) return;
    // Operators are plain ASCII.
    this.writer.page.write(new TextEncoder().encode(`${this.operators.join('\n')}\n`));
    this.operators = [];
  }

  /** After the writer has written to the page, which may have changed what holds. */
  forget(): void {
    this.state = atFirst;
  }

  add(operator: string): void {
    this.operators.push(operator);
  }

  /** Keeps what holds, to be brought back by `restore`. */
  save(): void {
    this.outer.push(this.state);
    this.add('q');
  }

  restore(): void {
    this.state = this.outer.pop()!;
    this.add('Q');
  }

  fillColour(hex: string): void {
    if (hex === this.state.fill) return;
    this.state = { ...this.state, fill: hex };
    this.add(`${rgb(hex)} rg`);
  }

  strokeColour(hex: string): void {
    if (hex === this.state.stroke) return;
    this.state = { ...this.state, stroke: hex };
    this.add(`${rgb(hex)} RG`);
  }

  /** Width, round ends and corners, and dashes. */
  line(widthMm: number, dashMm?: readonly [on: number, off: number]): void {
    const dash = dashMm ? `[${pt(dashMm[0])} ${pt(dashMm[1])}]` : '[]';
    const line = `${pt(widthMm)} w 1 J 1 j ${dash} 0 d`;
    if (line === this.state.line) return;
    this.state = { ...this.state, line };
    this.add(line);
  }

  /** Letters in the writer's font, their baseline beginning at a place. */
  letters(text: string, sizeMm: number, x: number, y: number): void {
    const { page, _font: font } = this.writer;
    page.fonts[font.id] ??= font.ref();
    const known = keptOf(letters, font);
    let hex = '';
    for (const letter of text) {
      let own = known.get(letter);
      if (own === undefined) known.set(letter, (own = font.encode(letter)[0].join('')));
      hex += own;
    }
    this.add(`BT /${font.id} ${pt(sizeMm)} Tf 1 0 0 -1 ${pt(x)} ${pt(y)} Tm <${hex}> Tj ET`);
  }

  /** How far a letter moves on in the writer's font, in ems. */
  advance(letter: string): number {
    const { _font: font } = this.writer;
    const known = keptOf(widths, font);
    let ems = known.get(letter);
    if (ems === undefined) known.set(letter, (ems = font.widthOfString(letter, 1)));
    return ems;
  }
}

/** Red, green and blue of #rrggbb, 0 to 1, to a part of a step of 255. */
function rgb(hex: string): string {
  const part = (from: number) =>
    Math.round((parseInt(hex.slice(from, from + 2), 16) / 255) * 1e4) / 1e4;
  return `${part(1)} ${part(3)} ${part(5)}`;
}
