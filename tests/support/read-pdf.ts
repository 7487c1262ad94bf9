import { OPS, Util, getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** One painted path: its box (left, top, right, bottom) and corner points, millimetres. */
export interface ReadPath {
  readonly box: readonly number[];
  /** End points of its pieces and points along its curves: x, y pairs. */
  readonly points: readonly (readonly [number, number])[];
  readonly kind: 'stroke' | 'fill' | 'other';
  /** Width of the pen, millimetres; and whether it draws dashes. */
  readonly penMm: number;
  readonly dashed: boolean;
}

export interface ReadPage {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly paths: readonly ReadPath[];
  readonly texts: readonly { text: string; x: number; y: number; widthMm: number }[];
}

const mmPerPoint = 25.4 / 72;
/** Points looked at along each Bézier curve. */
const alongCurve = 16;

/** Reads a PDF back with Mozilla's reader, which shares no code with the writer; y points down. */
export async function readPdf(bytes: Uint8Array) {
  const doc = await getDocument({ data: Uint8Array.from(bytes), verbosity: 0 }).promise;
  const pages: ReadPage[] = [];
  for (let n = 1; n <= doc.numPages; n++) pages.push(await readPage(await doc.getPage(n)));
  const { info } = await doc.getMetadata();
  const { Title, Language } = info as { Title?: string; Language?: string };
  await doc.destroy();
  return { pages, title: Title, language: Language };
}

type Page = Awaited<ReturnType<Awaited<ReturnType<typeof getDocument>['promise']>['getPage']>>;

async function readPage(page: Page): Promise<ReadPage> {
  const [left, bottom, right, top] = page.view;
  const onPage = (x: number, y: number) =>
    [(x - left) * mmPerPoint, (top - y) * mmPerPoint] as [number, number];
  const { fnArray, argsArray } = await page.getOperatorList();
  const paths: ReadPath[] = [];
  type State = { matrix: number[]; pen: number; dashed: boolean };
  let state: State = { matrix: [1, 0, 0, 1, 0, 0], pen: 1, dashed: false };
  const saved: State[] = [];
  fnArray.forEach((op, n) => {
    const args = argsArray[n];
    if (op === OPS.save) saved.push({ ...state });
    else if (op === OPS.restore) state = saved.pop()!;
    else if (op === OPS.transform)
      state.matrix = Util.transform(state.matrix, Array.from(args as number[]));
    else if (op === OPS.setLineWidth) state.pen = args[0];
    else if (op === OPS.setDash) state.dashed = args[0].length > 0;
    else if (op === OPS.constructPath) {
      const [paint, [data]] = args as [number, [Float32Array | null]];
      if (!data) return;
      const kind = [OPS.stroke, OPS.closeStroke].includes(paint)
        ? 'stroke'
        : [OPS.fill, OPS.eoFill].includes(paint)
          ? 'fill'
          : 'other';
      const points = pointsOf(data).map(([x, y]) => {
        const at = [x, y];
        Util.applyTransform(at, state.matrix);
        return onPage(at[0], at[1]);
      });
      const xs = points.map(([x]) => x);
      const ys = points.map(([, y]) => y);
      const box = [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
      paths.push({ box, points, kind, penMm: state.pen * mmPerPoint, dashed: state.dashed });
    }
  });
  const content = await page.getTextContent();
  const texts = content.items.flatMap((item) => {
    if (!('str' in item) || item.str.trim() === '') return [];
    const [x, y] = onPage(item.transform[4], item.transform[5]);
    return [{ text: item.str, x, y, widthMm: item.width * mmPerPoint }];
  });
  return {
    widthMm: (right - left) * mmPerPoint,
    heightMm: (top - bottom) * mmPerPoint,
    paths,
    texts,
  };
}

/** The reader's flat list: 0 move, 1 line, 2 cubic Bézier, 3 quadratic Bézier, 4 close. */
function pointsOf(data: ArrayLike<number>): [number, number][] {
  const points: [number, number][] = [];
  let at: [number, number] = [0, 0];
  for (let p = 0; p < data.length;) {
    const op = data[p++];
    if (op === 4) continue;
    if (op > 2) throw new Error(`path operator ${op} was not expected`);
    const end = op === 2 ? p + 4 : p;
    if (op === 2) {
      for (let k = 1; k < alongCurve; k++) {
        const t = k / alongCurve;
        const along = (axis: 0 | 1) =>
          (1 - t) ** 3 * at[axis] +
          3 * (1 - t) ** 2 * t * data[p + axis] +
          3 * (1 - t) * t ** 2 * data[p + 2 + axis] +
          t ** 3 * data[p + 4 + axis];
        points.push([along(0), along(1)]);
      }
    }
    at = [data[end], data[end + 1]];
    points.push(at);
    p = end + 2;
  }
  return points;
}
