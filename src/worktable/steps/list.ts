import { beadsStep } from './beads/step.js';
import { brushStep } from './brush/step.js';
import { pagesStep } from './pages/step.js';
import { panelStep } from './panel/step.js';
import { pictureStep } from './picture/step.js';
import { purseStep } from './purse/step.js';
import { workStep } from './work/step.js';
import type { Step } from './step.js';

/** The way, left to right. */
export const steps: readonly Step[] = [
  pictureStep,
  panelStep,
  beadsStep,
  brushStep,
  purseStep,
  pagesStep,
  workStep,
];

/** The step by its id; the first where there is none. */
export const stepNamed = (id: string): Step => steps.find((one) => one.id === id) ?? steps[0];
