/** What is wrong with one value in a file of ours, as data; `valueFault` words it. */
export type ValueFault =
  | { readonly kind: PlainFault }
  | { readonly kind: 'unknown-names'; readonly names: readonly string[] }
  | { readonly kind: 'type'; readonly expected: string }
  | { readonly kind: 'value'; readonly allowed: readonly string[] }
  | { readonly kind: 'between'; readonly least: number; readonly most: number }
  | { readonly kind: 'at-most'; readonly most: number }
  | { readonly kind: 'too-small'; readonly least: string; readonly of: Sized }
  | { readonly kind: 'too-big'; readonly most: string; readonly of: Sized };

type Sized = 'number' | 'text' | 'list';

/** Faults that need no further word. */
const plain = {
  missing: 'it is missing',
  'too-deep': 'it is nested too deeply',
  'one-of-several': 'its value is of none of the kinds that may stand here',
  finite: 'expected a finite number',
  'above-zero': 'expected a number above 0',
  'zero-or-more': 'expected 0 or more',
  frame: 'expected measurements of one frame that go together',
  hex: 'expected a colour as #rrggbb in small letters',
  letter: 'expected one letter from A to Z other than I and O',
  base64: 'expected base64',
  marks: "expected letters, '.' for bare, '_' for open",
};
export type PlainFault = keyof typeof plain;

const counted = (of: Sized) => (of === 'text' ? 'characters' : 'entries');

/** What can be wrong with one value in a file, to be put after its path. */
export function valueFault(fault: ValueFault): string {
  switch (fault.kind) {
    case 'unknown-names':
      return fault.names.length === 1
        ? `the name "${fault.names[0]}" is not known`
        : `these names are not known: ${fault.names.map((name) => `"${name}"`).join(', ')}`;
    case 'type':
      return `expected ${fault.expected}`;
    case 'value':
      return `expected ${fault.allowed.join(' or ')}`;
    case 'between':
      return `expected a number from ${fault.least} to ${fault.most}`;
    case 'at-most':
      return `expected at most ${fault.most}`;
    case 'too-small':
      return fault.of === 'number'
        ? `expected ${fault.least} or more`
        : `expected at least ${fault.least} ${counted(fault.of)}`;
    case 'too-big':
      return fault.of === 'number'
        ? `expected ${fault.most} or less`
        : `expected at most ${fault.most} ${counted(fault.of)}`;
    default:
      return plain[fault.kind];
  }
}
