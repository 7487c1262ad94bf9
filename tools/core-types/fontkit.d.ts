/** What the core uses of fontkit; the package's own types load those of Node. */
export interface Font {
  readonly unitsPerEm: number;
  readonly capHeight: number;
  hasGlyphForCodePoint(codePoint: number): boolean;
  glyphForCodePoint(codePoint: number): {
    readonly advanceWidth: number;
    readonly bbox: { minX: number; minY: number; maxX: number; maxY: number };
    readonly path: { readonly commands: readonly { command: string; args: number[] }[] };
  };
}
export declare function create(bytes: Uint8Array): Font;
