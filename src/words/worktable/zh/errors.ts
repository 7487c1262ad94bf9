import type { WorktableWords } from '../index.js';

/** What goes wrong on the page alone; all else says itself by the sentences of the core. */
export const errors: WorktableWords['errors'] = {
  nothingToOpen: '粘贴或拖入的内容里没有图片。请复制一张图片，或拖入一个图片文件。',
  pictureNotRead: (name) => `这里无法读取${name}。请存为 JPEG 或 PNG，再打开。`,
  workerEnded: '选珠子的过程停止了。请重新加载页面。',
};
