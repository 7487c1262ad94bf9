/** Files that are given as a palette by mistake. */
export type NotText = 'spreadsheet' | 'pdf' | 'page' | 'richText' | 'picture';

/**
 * What a file is, if its first characters say that it is no list in plain text: a zip (as today's
 * spreadsheets are) or an older compound file, PDF, HTML or XML, rich text, PNG, JPEG or GIF.
 */
export function notText(text: string): NotText | undefined {
  const start = text.slice(0, 200).trimStart();
  if (start.startsWith('PK\u0003\u0004') || start.startsWith('ÐÏ\u0011à')) return 'spreadsheet';
  if (start.startsWith('%PDF')) return 'pdf';
  if (/^<(!doctype|html|\?xml|table|svg)\b/i.test(start)) return 'page';
  if (start.startsWith('{\\rtf')) return 'richText';
  if (/^(‰PNG|ÿØÿ|GIF8)/.test(start)) return 'picture';
  return undefined;
}
