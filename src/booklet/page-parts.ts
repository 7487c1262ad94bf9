import type { PagePart } from '../core/pages/surface/page-part.js';
import type { Drawn } from './flow-page.js';
import type { StructureNode } from './structure.js';

/** Parts of a page with their places in a document: items side by side stand in one list. */
export function structured(parts: readonly PagePart[], section: StructureNode): Drawn[] {
  let list: StructureNode | undefined;
  return parts.map((part) => {
    if (part.as !== 'step') list = undefined;
    const { window } = part;
    return {
      node: nodeOf(part),
      draw: (surface) =>
        window ? surface.clipped(window, () => part.draw(surface)) : part.draw(surface),
    };
  });

  function nodeOf(part: PagePart): StructureNode {
    switch (part.as) {
      case 'title':
        return section.add('H1');
      case 'head':
        return section.add('H2');
      case 'text':
        return section.add('P');
      case 'picture':
        return section.add('Figure', { alt: part.alt });
      case 'step':
        return (list ??= section.add('L')).add('LI').add('LBody');
    }
  }
}
