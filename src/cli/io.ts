/** How the program meets the world, so that tests can stand in for it. */
export interface Io {
  out(text: string): void;
  err(text: string): void;
  /** Where the line of progress goes; undefined where there is none. */
  progress: NodeJS.WriteStream | undefined;
  signal: AbortSignal;
}
