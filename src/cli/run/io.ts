/** How the program meets the world, so that tests can stand in for it. */
export interface Io {
  out(text: string): void;
  err(text: string): void;
  /** Where the line of progress goes; undefined where there is none. */
  progress: NodeJS.WriteStream | undefined;
  /** Aborted by Ctrl-C while files are written. */
  signal: AbortSignal;
  /** Called around writing: until then Ctrl-C ends the program at once, since nothing is there yet. */
  guard?: (on: boolean) => void;
}
