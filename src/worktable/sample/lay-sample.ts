import { openPicture } from '../picture-in/open-file.js';
import { pieces } from '../store/store.js';
import { samplePicture, samplePiece } from './sample.js';

/**
 * Puts our sample on the table.
 *
 * @param before what is done with the piece that lies there, once the sample is ready
 */
export async function laySample(before: () => Promise<void> = async () => {}): Promise<void> {
  const picture = await openPicture(await samplePicture());
  await before();
  pieces.open({ ...samplePiece(), picture });
}
