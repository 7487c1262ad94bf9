/** Reads our SVG drawings back: only what the tests need, independent of the code that draws. */

/** The inside of the group with this id. */
export function groupIn(svg: string, id: string): string {
  const open = `<g id="${id}">`;
  const start = svg.indexOf(open);
  if (start < 0) throw new Error(`no group ${id}`);
  let depth = 1;
  const tags = /<g[\s>]|<\/g>/g;
  tags.lastIndex = start + open.length;
  for (let tag = tags.exec(svg); tag; tag = tags.exec(svg)) {
    depth += tag[0] === '</g>' ? -1 : 1;
    if (depth === 0) return svg.slice(start + open.length, tag.index);
  }
  throw new Error(`group ${id} is not closed`);
}

/** Attributes of every path in a piece of SVG. */
export function pathsIn(svg: string): { fill: string; stroke?: string; d: string }[] {
  return [...svg.matchAll(/<path ([^>]*)\/>/g)].map(([, text]) => {
    const attribute = (name: string) => new RegExp(`(?:^| )${name}="([^"]*)"`).exec(text)?.[1];
    const stroke = attribute('stroke');
    return {
      fill: attribute('fill') ?? '',
      d: attribute('d') ?? '',
      ...(stroke === undefined ? {} : { stroke }),
    };
  });
}

/** Points of each part of path data made of M, l and z. */
export function polylines(d: string): [number, number][][] {
  return d
    .split('M')
    .slice(1)
    .map((part) => {
      const numbers = part
        .replace('z', '')
        .split(/[\sl]+/)
        .map(Number);
      const points: [number, number][] = [[numbers[0], numbers[1]]];
      for (let p = 2; p < numbers.length; p += 2) {
        const [x, y] = points[points.length - 1];
        points.push([x + numbers[p], y + numbers[p + 1]]);
      }
      return points;
    });
}

export interface Inked {
  title: string;
  ink: string;
  /** Glyph id: face and code point. */
  id: string;
  left: number;
  right: number;
  top: number;
  bottom: number;
  baseline: number;
}

/** Every glyph in a piece of SVG with the box of its ink, by the outlines' own points. */
export function glyphsIn(svg: string, part = svg): Inked[] {
  const boxes = new Map<string, number[]>();
  for (const [, id, d] of svg.matchAll(/<path id="([^"]*)" d="([^"]*)"\/>/g)) {
    const numbers = d
      .split(/[A-Z\s]+/)
      .filter((text) => text !== '')
      .map(Number);
    const xs = numbers.filter((_, n) => n % 2 === 0);
    const ys = numbers.filter((_, n) => n % 2 === 1);
    boxes.set(id, [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)]);
  }
  const found: Inked[] = [];
  for (const run of part.matchAll(/<g fill="([^"]*)"><title>([^<]*)<\/title>(.*?)<\/g>/gs)) {
    for (const use of run[3].matchAll(/<use href="#([^"]*)" x="([^"]*)" y="([^"]*)"\/>/g)) {
      const [x, y] = [Number(use[2]), Number(use[3])];
      const box = boxes.get(use[1]);
      if (!box) throw new Error(`no outline ${use[1]}`);
      found.push({
        ink: run[1],
        title: run[2],
        id: use[1].split('-')[0],
        left: x + box[0],
        top: y + box[1],
        right: x + box[2],
        bottom: y + box[3],
        baseline: y,
      });
    }
  }
  return found;
}
