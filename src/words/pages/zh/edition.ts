import type { PageWords } from '../index.js';

/** How one booklet of a pattern differs from another. */
export const edition: PageWords['booklet']['edition'] = {
  grey: '黑白打印版',
  large: '大字版',
  left: '左手版',
  right: '右手版',
  mirrored:
    '本版供用另一只手钩的人使用，与图解原来所用的手相反：圈、表和数量都相同，图案成为左右相反的镜像。图案中的文字和数字也会反过来；如有文字或数字，需要专为这只手制作的图解。',
  fills:
    '不用颜色时，每种珠子用一种灰色表示；珠子种类多时，字母旁边还有一个记号：两条短线、四个点，或没有记号。颜色请看名称。',
};

/** What stands for pictures where the booklet is read aloud. */
export const alt: PageWords['booklet']['alt'] = {
  panel: (f) => `钩好的钩片图，珠面：${f.panel}`,
  chart: '钩片图解。逐圈表用文字说明同样的内容，字母的含义见材料表。',
  lining: '里布实际大小的裁剪纸样，带标记。',
};
