import { bareMark, undecidedMark } from '../../core/pattern/marks.js';
import type { Pattern } from '../../core/pattern/pattern.js';
import type { Doubt, ReadingReport } from '../../core/blank/read-blank.js';
import { placeInWedge } from '../../core/pages/lists/doubtful.js';
import type { Words } from '../../words/index.js';

interface ReadResult {
  pattern: Pattern;
  report: ReadingReport;
  folder: string | undefined;
  files: readonly string[];
}

/** Doubtful stitches that the summary for a person names one by one. */
const mostNamed = 30;

/** The `--json` summary of a reading: stable keys, every doubtful stitch. */
export function readJson({ pattern, report, folder, files }: ReadResult): string {
  const object = {
    schema: 'rondure-reading',
    version: 1,
    title: pattern.title,
    folder: folder ?? null,
    files,
    stitches: report.stitches,
    painted: report.painted,
    unpainted: report.unpainted,
    colours: report.groups,
    doubtful: report.doubts,
    litUnevenly: report.litUnevenly,
  };
  return JSON.stringify(object, null, 2) + '\n';
}

/** The same for a person: counts, colours, and the stitches to look at again. */
export function readText({ pattern, report, folder, files }: ReadResult, words: Words): string {
  const said = words.read;
  const { doubts } = report;
  const lines = [
    said.done({ title: pattern.title, folder: folder ?? '', dry: folder === undefined }),
    said.counts(report),
    ...report.groups.map((group) => said.group(group)),
    '',
    doubts.length === 0 ? said.noDoubts : said.doubts({ count: doubts.length }),
    ...doubts.slice(0, mostNamed).map((doubt) => doubtText(doubt, words)),
  ];
  if (doubts.length > mostNamed) {
    const file = files.find((name) => name === 'doubtful.csv');
    lines.push(said.moreDoubts({ count: doubts.length - mostNamed, file }));
  }
  if (report.litUnevenly) lines.push('', said.litUnevenly);
  return lines.join('\n') + '\n';
}

function doubtText({ round, stitch, mark, reason, other }: Doubt, words: Words): string {
  const said = words.read;
  const named = mark === bareMark || mark === undecidedMark ? said.unpainted : mark;
  const why = said.reasons[reason]({ other: other ?? said.anotherBead });
  return said.doubt({ ...placeInWedge(round, stitch), round, stitch, read: named, reason: why });
}
