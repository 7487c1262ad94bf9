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

/** The parts of a line of runs that stay whole: square brackets, `2 bare`, `x 7`. */
export function runPieces(body: string): string[] {
  return body.split(/ (?![^[\]]*\])(?!x \d)(?<!\bx )(?!(?<=\d )\p{L})/u);
}

/**
 * A line of a list, `R7 (…): ` and what follows, broken where it is long; what follows is set in.
 * No line begins or ends inside square brackets, `2 bare` or `x 7`, so that each reads by itself.
 */
export function listLine(head: string, body: string): string {
  const pieces = runPieces(body);
  const lines: string[] = [];
  let line = head;
  pieces.forEach((piece, n) => {
    if (n > 0 && line.length + 1 + piece.length > paragraphWidth) {
      lines.push(line);
      line = `    ${piece}`;
    } else {
      line = `${line} ${piece}`;
    }
  });
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
