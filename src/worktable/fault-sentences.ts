import type { ErrorCode, ErrorFacts, RondureError } from '../core/errors.js';
import type { FaultWords } from '../words/worktable/faults/english.js';
import { figure } from './words.js';

/** What only the command line, or a program that uses the library, can come upon. */
type NotOnPage =
  | 'bead-unknown'
  | 'card-too-long'
  | 'file-is-folder'
  | 'file-missing'
  | 'file-unreadable'
  | 'font-forbids'
  | 'font-unreadable'
  | 'frame-invalid'
  | 'frame-measure-impossible'
  | 'frame-not-ours'
  | 'frame-too-new'
  | 'from-needs-back'
  | 'interrupted'
  | 'length-unknown'
  | 'list-unlike'
  | 'option-value'
  | 'options-contradict'
  | 'output-disk-full'
  | 'output-exists'
  | 'output-file-exists'
  | 'output-file-not-ours'
  | 'output-is-here'
  | 'output-name-bad'
  | 'output-not-ours'
  | 'output-not-writable'
  | 'output-parent-not-folder'
  | 'page-not-built'
  | 'palette-unusable'
  | 'panel-unknown'
  | 'port-taken'
  | 'rounds-broken'
  | 'rounds-none'
  | 'rounds-unreadable'
  | 'stdin-empty'
  | 'svg-too-heavy'
  | 'swatch-invalid'
  | 'swatch-not-ours'
  | 'swatch-too-new'
  | 'usage'
  | 'wish-invalid'
  | 'wish-not-ours'
  | 'wish-too-new';

type OnPage = Exclude<ErrorCode, NotOnPage>;

/** Rounded inward, so that both ends will do. */
const range = (least: number, most: number) => ({
  least: figure(Math.ceil(least * 10 - 1e-6) / 10),
  most: figure(Math.floor(most * 10 + 1e-6) / 10),
});

const named = ({ name }: { name: string }) => ({ name });
const from = ({ where }: { where: string }) => ({ name: where });
const undo = (say: FaultWords) => say.undo;

/** The sentence for each code, of the words of one language: a code that has none does not compile. */
const sentences: { readonly [C in OnPage]: (say: FaultWords, f: ErrorFacts<C>) => string } = {
  'shape-impossible': (say, { expected }) => say.shape(range(expected.least, expected.most)),
  'polygon-needs-end-increase': (say) => say.corners,
  'pattern-not-json': (say, f) => say.notOurs(from(f)),
  'pattern-not-ours': (say, f) => say.notOurs(from(f)),
  'pattern-broken': (say, f) => say.notOurs(from(f)),
  'pattern-without-wish': (say, f) => say.notOurs(from(f)),
  'pattern-not-inside': (say, f) => say.notOurs(named(f)),
  'text-not-unicode': (say, f) => say.notOurs(named(f)),
  'png-text-damaged': (say, f) => say.damaged({ name: `PNG: ${f.keyword}` }),
  'pattern-invalid': (say, f) =>
    f.path ? say.notOursAt({ ...from(f), place: f.path }) : say.notOurs(from(f)),
  'pattern-too-new': (say, f) => say.tooNew(from(f)),
  'no-letter-free': (say, f) => say.noLetter({ most: figure(f.most) }),
  'beads-unreadable': (say, { got }) => (got === '' ? say.beadsNone : say.beadsTyped({ got })),
  'beads-too-many': (say, f) => say.beadsMany({ most: figure(f.most) }),
  'measurement-impossible': (say, f) => say.measured(range(f.least, f.most)),
  'turn-impossible': (say) => say.turn,
  'photo-points-too-few': (say) => say.pointsFew,
  'photo-points-in-line': (say) => say.pointsLine,
  'photo-lean-impossible': (say) => say.pointsLean,
  'swatch-measures-nothing': (say) => say.nothingMeasured,
  'across-out-of-reach': (say, f) => say.across(range(f.leastMm, f.mostMm)),
  'nothing-to-bead': (say) => say.nothingToBead,
  'stock-too-small': (say, { missing, purchase }) =>
    purchase
      ? say.stockBuy({
          missing: figure(missing),
          beads: figure(purchase.beads),
          name: purchase.name,
        })
      : say.stock({ missing: figure(missing) }),
  'stock-too-small-for-plain': (say, f) =>
    say.stockPlain({ name: f.name, needed: figure(f.needed), most: figure(f.most) }),
  'colour-not-hex': (say, { got }) => say.colour({ got }),
  'palette-all-left-out': (say) => say.noBeadLeft,
  'recolour-nothing-left': (say) => say.noBeadLeft,
  'palette-too-small-to-keep': (say, f) =>
    say.keptMany({ kept: figure(f.kept), most: figure(f.most) }),
  'glyph-missing': (say, { character }) => say.letterMissing({ character }),
  'script-unset': (say, { character }) => say.letterMissing({ character }),
  'size-unknown': (say, { got, known }) => say.size({ got, known: known.join(', ') }),
  'palette-empty': (say, f) => say.paletteEmpty(from(f)),
  'palette-no-beads-in-json': (say, f) => say.paletteEmpty(from(f)),
  'palette-no-colour-column': (say, f) => say.paletteColumn(from(f)),
  'palette-not-text': (say, f) => say.paletteNoTable(from(f)),
  'palette-not-json': (say, f) => say.paletteUnread(from(f)),
  'palette-too-long': (say, f) => say.paletteLong({ ...from(f), most: figure(f.most) }),
  'palette-no-bead-of-size': (say, f) =>
    say.paletteSize({ ...from(f), size: f.size, found: f.found.join(', ') }),
  'palette-bad-row': (say, f) =>
    say.paletteRow({ ...from(f), line: figure(f.line), got: f.got || (f.column ?? '') }),
  'palette-id-twice': (say, f) =>
    say.paletteTwice({
      ...from(f),
      line: figure(f.line),
      id: f.id,
      first: figure(f.firstLine),
    }),
  'jars-none': (say, f) => say.jarsNone(named(f)),
  'jars-not-in-grid': (say, f) =>
    say.jarsGrid({ ...named(f), rows: figure(f.rows), columns: figure(f.columns) }),
  'file-empty': (say, f) => say.fileEmpty(named(f)),
  'file-too-big': (say, f) => say.fileBig({ ...named(f), most: figure(f.limitMegabytes) }),
  'picture-format-not-read': (say, f) => say.format(named(f)),
  'picture-damaged': (say, f) => say.damaged(named(f)),
  'picture-too-large': (say, f) =>
    say.pixels({
      ...named(f),
      width: figure(f.width),
      height: figure(f.height),
      most: figure(f.limitMegapixels),
    }),
  'picture-invisible': (say, f) => say.invisible(named(f)),
  'svg-entities': (say, f) => say.drawing(named(f)),
  'svg-nested': (say, f) => say.drawing(named(f)),
  'svg-pictures-too-large': (say, f) => say.drawing(named(f)),
  'svg-too-slow': (say, f) => say.drawing(named(f)),
  'corner-marks-not-found': (say, f) => say.marks(named(f)),
  'blank-not-coloured': (say, f) => say.uncoloured(named(f)),
  'frame-out-of-reach': (say, f) => say.frameReach(range(f.leastMm, f.mostMm)),
  'frame-too-wide': (say, f) =>
    say.frameWide({ rounds: figure(f.rounds), from: figure(f.from), to: figure(f.to) }),
  'frame-rail-too-long': (say, f) => say.frameRail({ rounds: figure(f.rounds) }),
  'lining-impossible': (say, f) => say.lining(range(f.leastMm, f.mostMm)),
  'bead-kept-and-left-out': undo,
  'bead-not-in-palette': undo,
  'colour-not-finite': undo,
  'colours-impossible': undo,
  'letter-not-in-pattern': undo,
  'mask-shape-differs': undo,
  'merge-into-itself': undo,
  'swap-already-there': undo,
  'weights-impossible': undo,
};

/** An error of the core in the words of one language; undefined for one that the page cannot come upon. */
export function faultSentence(say: FaultWords, { code, facts }: RondureError): string | undefined {
  const sentence = (sentences as Record<string, (say: FaultWords, facts: unknown) => string>)[code];
  return sentence?.(say, facts);
}
