import type { FaultWords } from './english.js';

export const zh: FaultWords = {
  shape: (f) => `钩片的这个尺寸可以是${f.least}到${f.most}：请在“钩片”一步修改。`,
  corners: '有角的钩片须在每个分区的第一针或最后一针加针：请这样选，或改用圆边。',
  notOurs: (f) => `${f.name}里没有完好的 Rondure 图样：请打开另一份副本，或用图片重新制作。`,
  notOursAt: (f) =>
    `${f.name}不是完好的 Rondure 图样（位置：${f.place}）：请打开另一份副本，或用图片重新制作。`,
  tooNew: (f) => `${f.name}由更新的 Rondure 写成：请重新加载本页，再打开一次。`,
  noLetter: (f) => `一个图样最多有${f.most}种珠子颜色，这里已经用满：请先合并其中两种。`,
  beadsTyped: (f) => `“${f.got}”读不出珠子：请写成 3A 2B 1A 这样。`,
  beadsNone: '没有写珠子：请写成 3A 2B 1A 这样。',
  beadsMany: (f) => `写了超过${f.most}颗珠子，一个钩片放不下：请检查数目。`,
  measured: (f) =>
    `有一个尺寸不可能对：用这些珠子应在${f.least}和${f.most}之间。请重新测量，并检查圈数、分区和珠子大小。`,
  turn: '做了记号的针偏移得比针能倾斜的还多：请检查方向，并在每一圈标记同一分区的第一针。',
  pointsFew: '这些点看不出针怎样转动：请在最后一圈和更靠里的一圈上，各指出一个分区的第一针。',
  pointsLine: '这些点定不下钩片怎样摆放：请把边缘上的点分散到四周。',
  pointsLean:
    '按这些点，针会倾斜得超出可能：请检查每个点的圈和分区，并确认照片拍的是有珠子的一面。',
  nothingMeasured: '还没有测量任何尺寸：请至少填一项。',
  across: (f) =>
    `用这种针，钩片可以是${f.least}到${f.most} mm（2到80圈）：请选别的大小，或别的珠子。`,
  nothingToBead: '图片够不到钩片，没有一针会有珠子：请把图片拖到钩片下面，或为四周选一种珠子。',
  stock: (f) => `珠罐里做这个钩片还缺${f.missing}颗：请允许更多颜色，或把钩片做小。`,
  stockBuy: (f) => `珠罐里做这个钩片还缺${f.missing}颗：请买${f.beads}颗${f.name}，或把钩片做小。`,
  stockPlain: (f) =>
    `素色背面要${f.needed}颗${f.name}，珠罐只能给${f.most}颗：请为背面选别的珠子，或把钩片做小。`,
  colour: (f) => `“${f.got}”不是颜色：请写成六个字符，例如 d9b36a。`,
  noBeadLeft: '没有可选的珠子了：请少排除一些。',
  keptMany: (f) =>
    `必须用的珠子：${f.kept}；允许的颜色数：${f.most}。请允许更多颜色，或少保留一些珠子。`,
  letterMissing: (f) => `页面的字体里没有“${f.character}”：请从标题和珠子名称里去掉它。`,
  size: (f) => `珠子大小“${f.got}”不认识：请用${f.known}之一，或写明每种珠子的直径。`,
  paletteEmpty: (f) => `${f.name}里没有珠子：需要一行列名，再为每种珠子写一行，至少写出颜色。`,
  paletteColumn: (f) => `${f.name}没有颜色列：请把一列命名为 hex，颜色写成 #d9b36a 这样。`,
  paletteNoTable: (f) => `${f.name}不是普通表格：请打开它，存为 CSV。`,
  paletteUnread: (f) => `${f.name}无法读取：请在写出它的程序里重新保存。`,
  paletteLong: (f) => `${f.name}太长（最多${f.most}）：请只留下可能用到的珠子。`,
  paletteSize: (f) => `${f.name}没有大小为${f.size}的珠子，只有${f.found}：请从中选一种。`,
  paletteRow: (f) => `${f.name}第${f.line}行：“${f.got}”不能用在那里。请改正后重新打开文件。`,
  paletteTwice: (f) =>
    `${f.name}第${f.line}行重复了第${f.first}行的 id“${f.id}”：请给每种珠子各自的 id。`,
  jarsNone: (f) =>
    `${f.name}里看不到白纸上的珠子：请在白纸上分开放成小堆，在均匀的光线下从正上方拍照。`,
  jarsGrid: (f) =>
    `${f.name}里的珠子不是${f.rows}行、每行${f.columns}堆：请检查这两个数，并在小堆之间留一指宽的白纸。`,
  fileEmpty: (f) => `${f.name}是空的：请重新复制或下载。`,
  fileBig: (f) => `${f.name}太大，最多读取${f.most} MB：请另存一份小一些的。`,
  format: (f) => `${f.name}不是这里能读的图片：请存为 JPEG 或 PNG，再打开。`,
  damaged: (f) => `${f.name}不完整或已损坏：请重新复制或下载，或在图片程序里打开后重新保存。`,
  pixels: (f) =>
    `${f.name}有${f.width} × ${f.height}像素，最多读取${f.most}百万：请另存一份小一些的；每边2000像素就足够了。`,
  invisible: (f) => `${f.name}全是透明的，什么也看不见：请打开图层后再保存。`,
  drawing: (f) => `${f.name}画起来太费力：请在绘图程序里存为 PNG，再打开。`,
  marks: (f) =>
    `在${f.name}里找不到图表四角的圆形标记：请把整页拍平拍清楚，四个标记都要干净并在画面里。`,
  uncoloured: (f) => `${f.name}里图表没有一格涂了颜色：请检查照片是否正确。`,
  frameReach: (f) => `没有钩片适合这个宽度的口金：用这种针，口金可以宽${f.least}到${f.most} mm。`,
  frameWide: (f) => `口金对${f.rounds}圈的钩片来说太宽：请做${f.from}到${f.to}圈。`,
  frameRail: (f) => `口金的槽对${f.rounds}圈的钩片来说太长：请检查口金的宽和高，或多做几圈。`,
  lining: (f) => `里衬的这个尺寸放不下：可以是${f.least}到${f.most} mm。`,
  undo: '用这些珠子做不到：请撤销上一步，换个办法。',
};
