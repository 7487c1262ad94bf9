/** One line of progress on a terminal, rewritten in place; silent everywhere else. */
export class Progress {
  #shown = false;

  constructor(
    private readonly stream: NodeJS.WriteStream | undefined,
    private readonly quiet: boolean,
  ) {}

  say(text: string): void {
    if (this.quiet || !this.stream?.isTTY || process.env.TERM === 'dumb') return;
    this.stream.write(`\r\u001b[K${text}`);
    this.#shown = true;
  }

  clear(): void {
    if (this.#shown) this.stream?.write('\r\u001b[K');
    this.#shown = false;
  }
}
