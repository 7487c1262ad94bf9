/**
 * The first frame header of a JPEG, SOF0 to SOF15 without DHT, JPG and DAC (ITU-T T.81, B.1.1.3 and
 * B.2.2): its marker and where it begins; undefined where the picture begins without one.
 */
export function jpegFrame(view: DataView): { marker: number; place: number } | undefined {
  let place = 2;
  for (;;) {
    // Fill bytes and strays between segments are passed over, as decoders do.
    while (view.getUint8(place) !== 0xff) place++;
    while (view.getUint8(place) === 0xff) place++;
    const marker = view.getUint8(place++);
    if (marker === 0xd9 || marker === 0xda) return undefined;
    if (marker <= 0x01 || (marker >= 0xd0 && marker <= 0xd8)) continue;
    if (marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker))
      return { marker, place };
    place += Math.max(2, view.getUint16(place));
  }
}
