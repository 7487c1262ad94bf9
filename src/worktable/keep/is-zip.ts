/** The ending of a piece saved as one file. */
export const pieceEnding = '.rondure.zip';

/** Whether a file is a zip, by its first bytes. */
export async function isZip(file: File): Promise<boolean> {
  const [p, k, three, four] = new Uint8Array(await file.slice(0, 4).arrayBuffer());
  return p === 0x50 && k === 0x4b && three === 3 && four === 4;
}
