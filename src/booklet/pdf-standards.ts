import { srgbProfile } from './srgb-profile.js';

/** What a PDF says of itself, in the form that archives and readers ask for. */
export interface PdfAbout {
  readonly title: string;
  readonly subject: string;
  readonly author?: string | undefined;
  readonly creator: string;
  /** BCP 47. */
  readonly language: string;
  readonly day: Date;
}

/** The parts of the writer that its types leave out. */
interface Writer {
  ref(data: Record<string, unknown>): PDFKit.PDFKitReference;
  appendXML(xml: string): void;
  _addInfo(): void;
  readonly _root: { readonly data: Record<string, unknown> };
}

/**
 * Makes a tagged document say that it is PDF/UA-1 (ISO 14289-1:2014, 5) and PDF/A-2a
 * (ISO 19005-2:2011, 6.6.4), with sRGB as its output intent (6.2.3).
 */
export function claimStandards(doc: PDFKit.PDFDocument, about: PdfAbout): void {
  const writer = doc as unknown as Writer;
  // The writer's own facts are not escaped, and name no day of change.
  writer._addInfo = () => writer.appendXML(factsOf(about));
  const profile = srgbProfile();
  const stream = writer.ref({ Length: profile.length, N: 3 });
  stream.write(profile as Buffer);
  stream.end(undefined);
  const intent = writer.ref({
    Type: 'OutputIntent',
    S: 'GTS_PDFA1',
    Info: new String('sRGB IEC61966-2.1'),
    OutputConditionIdentifier: new String('sRGB IEC61966-2.1'),
    DestOutputProfile: stream,
  });
  intent.end(undefined);
  writer._root.data.OutputIntents = [intent];
}

function factsOf({ title, subject, author, creator, language, day }: PdfAbout): string {
  const when = `${day.toISOString().split('.')[0]}Z`;
  const one = (tag: string, container: string, text: string, attribute = '') =>
    `<${tag}><rdf:${container}><rdf:li${attribute}>${escaped(text)}</rdf:li></rdf:${container}></${tag}>`;
  const fallback = ' xml:lang="x-default"';
  return `<rdf:Description rdf:about="" xmlns:xmp="http://ns.adobe.com/xap/1.0/">
<xmp:CreateDate>${when}</xmp:CreateDate><xmp:ModifyDate>${when}</xmp:ModifyDate>
<xmp:CreatorTool>${escaped(creator)}</xmp:CreatorTool></rdf:Description>
<rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/">
${one('dc:title', 'Alt', title, fallback)}
${one('dc:description', 'Alt', subject, fallback)}
${one('dc:language', 'Bag', language)}
${author === undefined ? '' : one('dc:creator', 'Seq', author)}</rdf:Description>
<rdf:Description rdf:about="" xmlns:pdf="http://ns.adobe.com/pdf/1.3/"><pdf:Producer>${escaped(creator)}</pdf:Producer></rdf:Description>
<rdf:Description rdf:about="" xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/"><pdfaid:part>2</pdfaid:part><pdfaid:conformance>A</pdfaid:conformance></rdf:Description>
<rdf:Description rdf:about="" xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/"><pdfuaid:part>1</pdfuaid:part></rdf:Description>
${extension}`;
}

/** PDF/A wants names that it does not know to be described (ISO 19005-2, 6.6.2.3). */
const extension = `<rdf:Description rdf:about="" xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/" xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#" xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#">
<pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType="Resource"><pdfaSchema:schema>PDF/UA identification schema</pdfaSchema:schema>
<pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI><pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>
<pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource"><pdfaProperty:name>part</pdfaProperty:name><pdfaProperty:valueType>Integer</pdfaProperty:valueType>
<pdfaProperty:category>internal</pdfaProperty:category><pdfaProperty:description>Part of ISO 14289 that it follows</pdfaProperty:description></rdf:li></rdf:Seq></pdfaSchema:property>
</rdf:li></rdf:Bag></pdfaExtension:schemas></rdf:Description>`;

const escaped = (text: string): string =>
  text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;');
