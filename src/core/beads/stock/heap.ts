/** A heap of groups, the one that switches cheapest on top (ties: the lower group). */
export interface SwitchHeap {
  readonly key: number[];
  readonly group: number[];
}

/** Makes a heap of what is given; O(n). */
export function heapOf(key: number[], group: number[]): SwitchHeap {
  const heap = { key, group };
  for (let at = (key.length >> 1) - 1; at >= 0; at--) sink(heap, at);
  return heap;
}

export function push({ key, group }: SwitchHeap, newKey: number, newGroup: number): void {
  let at = key.length;
  key.push(newKey);
  group.push(newGroup);
  while (at > 0) {
    const above = (at - 1) >> 1;
    if (key[above] < newKey || (key[above] === newKey && group[above] <= newGroup)) break;
    key[at] = key[above];
    group[at] = group[above];
    at = above;
  }
  key[at] = newKey;
  group[at] = newGroup;
}

/** Takes the top away; the heap must not be empty. */
export function pop(heap: SwitchHeap): void {
  const { key, group } = heap;
  const lastKey = key.pop() as number;
  const lastGroup = group.pop() as number;
  if (key.length === 0) return;
  key[0] = lastKey;
  group[0] = lastGroup;
  sink(heap, 0);
}

function sink({ key, group }: SwitchHeap, from: number): void {
  const n = key.length;
  const [myKey, myGroup] = [key[from], group[from]];
  let at = from;
  for (;;) {
    let below = 2 * at + 1;
    if (below >= n) break;
    const right = below + 1;
    if (
      right < n &&
      (key[right] < key[below] || (key[right] === key[below] && group[right] < group[below]))
    ) {
      below = right;
    }
    if (myKey < key[below] || (myKey === key[below] && myGroup <= group[below])) break;
    key[at] = key[below];
    group[at] = group[below];
    at = below;
  }
  key[at] = myKey;
  group[at] = myGroup;
}
