/** The name of one panel's own file: the first panel has the plain name, the second `back-` before it. */
export function panelFile(panelIndex: number, name: string): string {
  return panelIndex === 0 ? name : `back-${name}`;
}
