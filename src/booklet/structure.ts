/** Kinds of parts of a document (ISO 32000-1, 14.8.4). */
export type StructureType =
  | 'Document'
  | 'Sect'
  | 'H1'
  | 'H2'
  | 'P'
  | 'Span'
  | 'Table'
  | 'TR'
  | 'TH'
  | 'TD'
  | 'L'
  | 'LI'
  | 'Lbl'
  | 'LBody'
  | 'Figure';

/** What is said of a part besides its content. */
export interface StructureFacts {
  /** What stands for a picture when the document is read aloud. */
  readonly alt?: string;
  /** BCP 47, where it is not the document's. */
  readonly language?: string | undefined;
  /** Whether a head of a table is that of a column or of a row. */
  readonly scope?: 'Column' | 'Row';
}

/** A part of the document in reading order: other parts, or what is drawn on pages. */
export class StructureNode {
  readonly children: StructureNode[] = [];

  constructor(
    readonly type: StructureType,
    readonly facts: StructureFacts = {},
  ) {}

  /** Adds a part at the end. */
  add(type: StructureType, facts: StructureFacts = {}): StructureNode {
    const node = new StructureNode(type, facts);
    this.children.push(node);
    return node;
  }
}
