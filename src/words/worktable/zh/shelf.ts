import type { WorktableWords } from '../index.js';

/** The shelf of pieces, and how they are kept. */
export const shelf: WorktableWords['shelf'] = {
  title: '架子',
  intro: '每一步之后，您的作品都保存在这台设备的这个浏览器里。',
  empty: '这里还什么都没有。有了第一张图片，作品就会放到架子上。',
  onTable: '在桌上',
  removed: '从架子上取下的',
  removedHow: '清走之前都可以放回去。',
  open: (title) => `把${title}放到桌上`,
  take: (title) => `把${title}从架子上取下`,
  back: (title) => `把${title}放回架子`,
  takeShort: '取下',
  backShort: '放回',
  takenOff: (title) => `${title}已从架子上取下。`,
  putBack: (title) => `${title}又放回架子了。`,
  waits: (title) => `${title}在架子上。`,
  copyOf: (title) => `${title}，第二件`,
  copied: '另一个窗口保留它的作品。您在这里做的，作为单独的作品继续。',
  when: (date) => `上次编辑：${date}`,
  elsewhere: '这件作品正在另一个窗口中打开。',
  refused: '这个浏览器不保存任何东西，可能因为是隐私窗口。关闭之前请把作品存为文件。',
  full: '这台设备没有空间了。您最后的步骤在桌上，但没有保存：请现在把作品存为文件。',
  edition: '本页面有新版本了。您的作品会保留。',
  fileDamaged: (file) => `${file}：这件作品打不开，因为有一部分缺失或损坏。`,
  fileNewer: (file) =>
    `${file}：这件作品由本页面的更新版本制作。请重新打开页面，或索要较旧的文件。`,
  forClass: '给学员',
  classHow:
    '勾选的每件作品的图解和钩法合成一个PDF：每个名字一份，都从新的一张纸开始；没有名字就只有一份。',
  classNames: '名字，每行一个',
  classSave: '存为一个PDF',
};
