/** Width of the paragraphs above a list, characters. */
const paragraphWidth = 76;

/** Breaks a paragraph into lines at spaces. */
export function wrapped(paragraph: string, width = paragraphWidth): string {
  const lines: string[] = [];
  let line = '';
  for (const word of paragraph.split(' ')) {
    if (line && line.length + 1 + word.length > width) {
      lines.push(line);
      line = word;
    } else {
      line = line ? `${line} ${word}` : word;
    }
  }
  return [...lines, line].join('\n');
}

/** A title or name on one line: control characters and runs of space become one space. */
export function oneLine(text: string): string {
  return text.replace(/[\p{Cc}\s]+/gu, ' ').trim();
}

/** Lines of a table in two columns, the first padded to one width. */
export function twoColumns(rows: readonly (readonly [string, string])[]): string {
  const width = Math.max(0, ...rows.map(([left]) => left.length));
  return rows.map(([left, right]) => `  ${left.padEnd(width)}  ${right}`).join('\n');
}
