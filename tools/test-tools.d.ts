/** Path of a Chromium on this machine, or undefined. */
export function chromiumPath(): string | undefined;
/** Path of a Firefox on this machine, or undefined. */
export function firefoxPath(): string | undefined;
/** Path of WebKitGTK's small browser, or undefined. */
export function miniBrowserPath(): string | undefined;
