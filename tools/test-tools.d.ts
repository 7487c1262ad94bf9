/** Path of a Chromium on this machine, or undefined. */
export function chromiumPath(): string | undefined;
