/** What a scene asks of a browser: the little that all three engines can do alike. Sizes and places in CSS pixels. */
export interface EnginePage {
  open(url: string): Promise<void>;
  /** Value of a JavaScript expression or awaited promise in the page; must be plain data. */
  evaluate<T>(expression: string): Promise<T>;
  /** A press of the main button at a place of the window. */
  pressAt(x: number, y: number): Promise<void>;
  /** Presses at the first place, moves through the others, lets go at the last. */
  drag(places: readonly (readonly [number, number])[]): Promise<void>;
  type(text: string): Promise<void>;
  /** One key by its name in the UI Events standard: `Tab`, `Enter`, `ArrowLeft`, `z`; with `Control` held when asked. */
  key(name: string, held?: 'Control' | 'Shift'): Promise<void>;
  /** PNG of the window. */
  screenshot(): Promise<Uint8Array>;
  /** Of the page inside the window. WebKitGTK's window has a bar that keeps it at least 450 wide. */
  size(width: number, height: number): Promise<void>;
  close(): Promise<void>;
}

/** A browser that is running; each page has storage of its own. */
export interface Engine {
  readonly name: EngineName;
  newPage(width: number, height: number): Promise<EnginePage>;
  close(): Promise<void>;
}

export type EngineName = 'chromium' | 'firefox' | 'webkit';
