/** What can be wrong with one value in a pattern file, to be put after its path. */
export const pattern = {
  unknownKeys: (keys: readonly string[]) =>
    keys.length === 1
      ? `the name "${keys[0]}" is not known`
      : `these names are not known: ${keys.map((key) => `"${key}"`).join(', ')}`,
  missing: 'it is missing',
  wrongType: (expected: string) => `expected ${expected}`,
  wrongValue: (allowed: readonly string[]) => `expected ${allowed.join(' or ')}`,
  tooSmall: (least: string, of: 'number' | 'text' | 'list') =>
    of === 'number'
      ? `expected ${least} or more`
      : `expected at least ${least} ${of === 'text' ? 'characters' : 'entries'}`,
  tooBig: (most: string, of: 'number' | 'text' | 'list') =>
    of === 'number'
      ? `expected ${most} or less`
      : `expected at most ${most} ${of === 'text' ? 'characters' : 'entries'}`,
  tooDeep: 'it is nested too deeply',
  oneOfSeveral: 'its value is of none of the kinds that may stand here',
};
