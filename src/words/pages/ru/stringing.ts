import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { many } = numbersIn('ru');
const atHour = (hour: number): string =>
  `примерно на ${many(hour, { one: 'часе', other: 'часах' })} на стороне с бисером`;

/** How to string, and where a length is joined on. */
export const stringing: PageWords['stringing'] = {
  order:
    'Нанизывать бисер в порядке этого списка, сверху вниз и в каждой строке слева направо: первым идёт на нить самый внешний ряд. Последнюю бисерину на нити провязывают первой.',
  reading:
    'Как читать: 3A — это три бисерины A. Часть в круглых скобках, за которой стоит x 3, нанизывают 3 раза. Впереди стоят число бисерин ряда и сумма на нити, когда его строка нанизана: считать в конце каждой строки.',
  bare: 'Пустым петлям бисерина не нужна, в этом списке их нет.',
  join: (f) =>
    f.atRoundEnd
      ? `Присоединить этот отрезок в начале ряда ${f.round}, ${atHour(f.hour)}.`
      : `Присоединить этот отрезок перед петлёй ${f.stitch} ряда ${f.round}, ${atHour(f.hour)}.`,
};
