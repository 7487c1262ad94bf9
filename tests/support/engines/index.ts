import { startChromium } from './chromium.js';
import type { Engine, EngineName } from './engine.js';
import { startFirefox } from './firefox.js';
import { startWebKit } from './webkit.js';

export type { Engine, EngineName, EnginePage } from './engine.js';

const starts: Record<EngineName, () => Promise<Engine>> = {
  chromium: startChromium,
  firefox: startFirefox,
  webkit: startWebKit,
};

/** The three engines that a page has to work in. */
export const engineNames = Object.keys(starts) as EngineName[];

/** Starts one of them, without a window on a screen. */
export const startEngine = (name: EngineName) => starts[name]();
