/**
 * All that the core takes from outside the language itself: three functions that Node and browsers
 * share (WHATWG Encoding; HTML, "Base64 utility methods"). `npm run typecheck` compiles the core with
 * this instead of the types of Node and of the DOM.
 */
declare class TextDecoder {
  constructor(label?: string, options?: { fatal?: boolean; ignoreBOM?: boolean });
  decode(input?: Uint8Array): string;
}
declare class TextEncoder {
  encode(input?: string): Uint8Array<ArrayBuffer>;
}
declare function atob(base64: string): string;
