import { RondureError } from '../../core/errors.js';

/** A turn as it was typed: with the work is positive. */
export interface TurnValue {
  amount: number;
  unit: 'degrees' | 'stitches';
}

/** `24deg against`, `5deg with`, `-24`, `2.5st against`. */
export function turnValue(option: string) {
  return (text: string): TurnValue => {
    const parts =
      /^([+-]?)(\d{1,3}(?:\.\d*)?|\.\d+) ?(deg(?:rees)?|°|st(?:itch(?:es)?)?)? ?(against|with)?$/.exec(
        text.trim().toLowerCase().replace(/\s+/g, ' '),
      );
    // Which way is never guessed: both ways give a lean that can be believed.
    const ways = [parts?.[1], parts?.[4]].filter((one) => one !== undefined && one !== '');
    if (!parts || (ways.length !== 1 && Number(parts[2]) !== 0)) {
      throw new RondureError('option-value', {
        option,
        got: text.replace(/\s+/g, ' ').slice(0, 60),
        expected: { kind: 'turn' },
      });
    }
    const sign = parts[1] === '-' || parts[4] === 'against' ? -1 : 1;
    const unit = parts[3]?.startsWith('st') ? 'stitches' : 'degrees';
    return { amount: sign * Number(parts[2]), unit };
  };
}
