import type { Pair } from '../english/sewing.js';
import type { PageWords } from '../index.js';
import { runsText } from './frame.js';

/** How the two panels of a purse are sewn together, by count. */
export const sewing: PageWords['sewing'] = {
  lay: (f) =>
    `把钩片“${f.back}”珠面朝下放好，再把钩片“${f.front}”珠面朝上放在它上面，两片的图案都正立，使两个外面都是珠子。两片是用同一只手钩的；从“${f.front}”一侧看，“${f.back}”的圈是反方向的。`,
  count: (f) =>
    `边缘按针数缝合。最后一圈是第${f.round}圈，每片都有${f.stitches}针。在两片上都标出这一圈的第一针，从那里沿钩编方向数。`,
  meet: (f) =>
    `“${f.front}”的第1针对“${f.back}”的第${f.stitches}针，第2针对第${f.stitches - 1}针，依此类推：两个号码相加总是${f.stitches + 1}。`,
  meetShifted: (f) =>
    `“${f.front}”的第${f.stitch}针对“${f.back}”的第${f.meets}针；从那里起，“${f.front}”往后数（号码增大），“${f.back}”往回数（号码减小）。`,
  spiral:
    '螺旋钩时，最后一圈的结尾比开头靠外一圈，而两片的台阶朝相反的方向升高：两片的边缘最多相差一圈，台阶旁边差得最多。不要凭眼睛缝：按针数缝，让缝线把两条边缘拉到一起。最后一圈之后的引拔针不计数。',
  joined: '边缘整圈都正好对齐。闭合最后一圈的引拔针不计数。',
  opening: (f) =>
    `上方留口装口金：通常略少于边缘的一半，以12点钟方向为正中${f.marked ? '（常见做法，无出处）' : ''}。从口金的一个铰链处往下，绕过6点钟方向，再往上缝到另一个铰链处；缝到每个铰链下方5至10 mm处为止。`,
  openingOfFrame: (f) => {
    const open = f.told
      ? '上方留口装口金。'
      : `上方留口装口金：装入口金的是“${f.front}”最后一圈的这些针：${runsText(f.frontInFrame)}；“${f.back}”最后一圈的这些针：${runsText(f.backInFrame)}。`;
    if (!f.first || !f.last) return open;
    const pair = (one: Pair) => `“${f.front}”第${one.front}针与“${f.back}”第${one.back}针`;
    const eased =
      f.halves === 0
        ? ''
        : `缝合处与口金之间的${f.halves}对针不缝：因为两条边缘升高的方式不同，每对只有一针装入口金；另一针在铰链处缩缝进去。`;
    return `${open}缝合${f.pairs}对针，从${pair(f.first)}开始，绕过6点钟方向，到${pair(f.last)}为止。${eased}`;
  },
  work: '先用珠针或线把下表中的各对针固定在一起，先固定6点钟方向，再固定其他；然后针对针缝合，每针都挑起顶部的两根线。用钩编的线，或结实的尼龙线或涤纶线，线长约为缝合长度的三倍。',
  care: (fixing) =>
    `注意：缝针和珠针在使用前后都要清点，并且和珠子一起放在幼儿够不到的地方。${
      fixing === undefined ? '' : '口金可能含镍，有些人会过敏。'
    }${
      fixing === 'glued' ? '在空气流通的房间里上胶，远离明火和儿童，并阅读标签。' : ''
    }眼睛和手要经常休息。以居住地或销售地的规定为准。`,
  columns: (f) => ['钟点方向', f.front, f.back],
  row: (f) => [
    `${f.frontHour}点钟（“${f.backName}”上为${f.backHour}点钟）`,
    String(f.front),
    String(f.back),
  ],
};
