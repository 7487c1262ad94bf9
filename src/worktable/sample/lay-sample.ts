import { openPicture } from '../picture-in/open-file.js';
import { pieces } from '../store/store.js';
import { samplePicture, samplePiece } from './sample.js';

/**
 * Puts our sample on the table.
 *
 * @param before what is done with the piece that lies there, once the sample is ready
 * @param file its picture, where it is on its way already
 */
export async function laySample(
  before: () => Promise<unknown> = async () => {},
  file: Promise<File> = samplePicture(),
): Promise<void> {
  const picture = await openPicture(await file);
  await before();
  pieces.open({ ...samplePiece(), picture });
}
