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

/** What a terminal would obey instead of showing, all but the end of a line. */
// eslint-disable-next-line no-control-regex
const obeyed = /[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u2028-\u202e\u2066-\u2069]/g;

/**
 * The same streams, which get nothing but lines of letters, whatever a file held: in JSON such
 * characters are escaped, elsewhere each becomes a space.
 */
export function printable(io: Io, asJson: boolean): Io {
  const shown = (text: string) =>
    text.replace(obeyed, (one) =>
      asJson ? `\\u${one.charCodeAt(0).toString(16).padStart(4, '0')}` : ' ',
    );
  return { ...io, out: (text) => io.out(shown(text)), err: (text) => io.err(shown(text)) };
}
