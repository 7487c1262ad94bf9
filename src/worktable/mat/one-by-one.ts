const waiting: (() => void)[] = [];
let running = false;

function next(): void {
  waiting.shift()?.();
  running = waiting.length > 0;
  // A task of its own each: fingers are heard in between.
  if (running) setTimeout(next);
}

/** Does things that take some milliseconds one after the other, and listens to the maker in between. Gives the way to call it off. */
export function oneByOne(work: () => void): () => void {
  waiting.push(work);
  if (!running) {
    running = true;
    setTimeout(next);
  }
  return () => {
    const at = waiting.indexOf(work);
    if (at >= 0) waiting.splice(at, 1);
  };
}
