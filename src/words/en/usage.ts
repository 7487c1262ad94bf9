/** What is wrong with a command line as a whole, as data; `usageSaid` words it. */
export type UsageProblem =
  | { readonly kind: keyof typeof plain }
  /** One option is given without the other that it goes with. */
  | { readonly kind: 'needs'; readonly option: string; readonly needs: string }
  | { readonly kind: 'frame-unmeasured'; readonly name: 'width' | 'height' }
  | LineProblem;

/** What the parser of command lines found; `command` is empty where none is named. */
export type LineProblem = { readonly command: string } & (
  | {
      readonly kind: 'unknown-option' | 'unknown-command';
      readonly got: string;
      readonly near: readonly string[];
    }
  | { readonly kind: 'argument-missing'; readonly name: string }
  | { readonly kind: 'value-missing'; readonly option: string }
  | { readonly kind: 'too-many-arguments'; readonly expected: number; readonly got: number }
  /** Something else; `detail` is the parser's own. */
  | { readonly kind: 'parser'; readonly detail: string }
);

/** What needs no further word. */
const plain = {
  'no-pattern-folder': 'Say where the pattern should go: add -o and the name of a new folder.',
  'no-folder': 'Say where the files should go: add -o and the name of a new folder.',
  'no-folder-beside':
    'Say where the files should go: add -o and the name of a new folder, or give pattern.json itself and --force to write beside it.',
  'no-booklet-file': 'Say where the booklet should go: add -o and a name that ends in .pdf.',
  'no-lining-file':
    'Say where the template should go: add -o and a name that ends in .pdf or .svg.',
  'no-swatch-file': 'Say where the file should go: add -o swatch.json, or --dry-run.',
  'no-blank': 'Say which blank chart was coloured: add --blank and the name of its blank.json.',
  'no-palette': 'Say which palette to read: give its file, or a photograph with --from-picture.',
  'no-grid':
    'Say how the beads lie in the picture: add --rows and --columns, for instance --rows 3 --columns 4.',
  'nothing-to-change':
    'Say what should change: --swap, --merge, --leave-out, --limit or --beads (see rondure recolour --help).',
  'force-without-folder':
    'Nothing is written without a folder, so --force has nothing to replace: add -o DIR.',
  'force-without-file': '--force goes with -o and the name of a file.',
  'language-without-booklet':
    'Only the booklet has a language: add --booklet, or leave --language out.',
  'bare-rounds-without-frame':
    '--bare-rounds tells how a frame is covered: give the frame with --frame as well.',
  'ruler-half-given':
    'A known length in the photograph needs --ruler-length and two points ruler=x,y in --points: give both.',
  'pattern-has-two-panels':
    'This pattern has two panels, so a purse cannot have one of them only: leave --panels out.',
};

/** Where to read on. */
export const tryHelp = (command: string) =>
  `See: rondure ${command === '' ? '' : `${command} `}--help`;

/** The sentence for a command line that cannot be followed. */
export function usageSaid(problem: UsageProblem): string {
  switch (problem.kind) {
    case 'needs':
      return `${problem.option} needs ${problem.needs}: give both.`;
    case 'frame-unmeasured':
      return `Measure the frame and give its ${problem.name}: --${problem.name} and a length such as 85mm.`;
    case 'unknown-option':
    case 'unknown-command':
    case 'argument-missing':
    case 'value-missing':
    case 'too-many-arguments':
    case 'parser':
      return `${lineProblem(problem)} ${tryHelp(problem.command)}`;
    default:
      return plain[problem.kind];
  }
}

function lineProblem(problem: LineProblem): string {
  switch (problem.kind) {
    case 'unknown-option':
      return `Unknown option '${problem.got}'${meantOneOf(problem.near)}`;
    case 'unknown-command':
      return `Unknown command '${problem.got}'${meantOneOf(problem.near)}`;
    case 'argument-missing':
      return `Missing required argument '${problem.name}'.`;
    case 'value-missing':
      return `Option '${problem.option}' argument missing.`;
    case 'too-many-arguments':
      return `Too many arguments for '${problem.command}'. Expected ${problem.expected} ${problem.expected === 1 ? 'argument' : 'arguments'} but got ${problem.got}.`;
    case 'parser':
      return `${problem.detail}.`;
  }
}

const meantOneOf = (near: readonly string[]) => {
  if (near.length === 0) return '.';
  return ` (Did you mean ${near.length === 1 ? '' : 'one of '}${near.join(', ')}?)`;
};
