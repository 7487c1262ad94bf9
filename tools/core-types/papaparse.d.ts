/** What the core uses of papaparse; the package's own types load those of Node. */
interface ParseMeta {
  readonly cursor: number;
}
interface ParseConfig<Row> {
  delimiter?: string;
  newline?: '\n';
  step?(result: { data: Row; meta: ParseMeta }): void;
}
declare const Papa: {
  parse<Row>(
    text: string,
    config: ParseConfig<Row>,
  ): { data: Row[]; errors: { code: string; index?: number }[] };
  unparse(rows: unknown[][], config: { newline: string; escapeFormulae: RegExp }): string;
};
export default Papa;
