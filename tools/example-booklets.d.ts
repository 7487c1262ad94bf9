/** One of the booklets in docs/booklets. */
export interface Example {
  readonly name: string;
  readonly frame?: readonly string[];
  readonly chart: readonly string[];
  readonly booklet: readonly string[];
}
export const examples: readonly Example[];
export function makeExample(example: Example, folder: string): string;
export function drawPages(pdf: string, name: string, folder: string): string[];
