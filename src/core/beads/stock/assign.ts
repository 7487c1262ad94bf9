import { heapOf, pop, push } from './heap.js';
import type { SwitchHeap } from './heap.js';
import type { StockProblem } from './groups.js';

/** Who serves whom when some beads are open, at the least cost that their limits allow. */
export interface Assignment {
  /** Stitches of group g that slot k serves at [g·K + k]; length G·K. */
  readonly flow: Int32Array;
  /**
   * What one more stitch's worth of each slot would save; length K. The proof that nothing is
   * cheaper: cost = Σ supply · min over k of (cost + price) - Σ price · limit.
   */
  readonly price: Float64Array;
  /** Σ flow · weight · difference. */
  readonly cost: number;
  /** Pairs looked at, to ration work. */
  readonly work: number;
}

/** Costs become whole numbers up to about this, so that sums of them are exact. */
const largestCost = 2 ** 44;

/** Factor that makes whole numbers of costs: a power of two, so that float32 costs stay exact. */
export function costScale({ difference, weight }: StockProblem): number {
  let farthest = 0;
  for (const d of difference) if (d > farthest) farthest = d;
  let heaviest = 0;
  for (const w of weight) if (w > heaviest) heaviest = w;
  const most = farthest * heaviest;
  let scale = 1;
  if (!(most > 0)) return scale;
  while (most * scale < largestCost / 2) scale *= 2;
  while (most * scale > largestCost) scale /= 2;
  return scale;
}

/**
 * The exact assignment under limits, for fixed open candidates: every stitch starts at its
 * cheapest bead, then what overflows moves along shortest paths in the graph of beads, whose edge
 * from a to b is the cheapest switch of a stitch from a to b (successive shortest paths with
 * potentials: J. Edmonds and R. M. Karp, Journal of the ACM 19(2):248-264, 1972). Ties go to the
 * lower slot and group. Undefined when the limits do not reach round all stitches.
 */
export function assign(
  problem: StockProblem,
  open: readonly number[],
  scale = costScale(problem),
): Assignment | undefined {
  const { groups: n, difference, weight, supply, limit, stitches } = problem;
  const K = open.length;
  if (open.reduce((sum, j) => sum + limit[j], 0) < stitches) return undefined;

  const cost = new Float64Array(n * K);
  const flow = new Int32Array(n * K);
  const free = Float64Array.from(open, (j) => limit[j]);
  for (let g = 0; g < n; g++) {
    let best = 0;
    const w = weight[g] * scale;
    for (let k = 0; k < K; k++) {
      cost[g * K + k] = Math.round(w * difference[open[k] * n + g]);
      if (cost[g * K + k] < cost[g * K + best]) best = k;
    }
    flow[g * K + best] = supply[g];
    free[best] -= supply[g];
  }

  const potential = new Float64Array(K);
  const graph = beadGraph(K, cost, flow);
  const spent = shiftOverflow(graph, free, potential, flow);

  let scaled = 0;
  for (let at = 0; at < flow.length; at++) {
    if (flow[at] > 0) scaled += flow[at] * (cost[at] / scale);
  }
  const top = potential.reduce((most, p) => Math.max(most, p), 0);
  const price = potential.map((p) => (top - p) / scale);
  return { flow, price, cost: scaled, work: n * K + spent };
}

/** The beads as a graph: the cheapest switch from each to each. */
interface BeadGraph {
  readonly slots: number;
  /** Brings the edges from slot a up to date. */
  settle(a: number): void;
  /** Cost of the cheapest switch from a to b at [a·K + b], Infinity without one; see `settle`. */
  readonly edges: Float64Array;
  /** The group that makes the switch from a to b. */
  mover(a: number, b: number): number;
  /** Moves stitches of the mover of a settled edge. */
  move(a: number, b: number, amount: number): void;
}

/** Heaps for a slot are made when its edges are first asked for; entries that left go when on top. */
function beadGraph(K: number, cost: Float64Array, flow: Int32Array): BeadGraph {
  const heaps: SwitchHeap[][] = [];
  const edges = new Float64Array(K * K).fill(Infinity);
  const isSettled = new Uint8Array(K);
  const build = (a: number): SwitchHeap[] => {
    const here: number[] = [];
    for (let g = 0; g * K < flow.length; g++) if (flow[g * K + a] > 0) here.push(g);
    return Array.from({ length: K }, (_, b) => {
      const keys = b === a ? [] : here.map((g) => cost[g * K + b] - cost[g * K + a]);
      return heapOf(keys, b === a ? [] : here.slice());
    });
  };
  const arrive = (a: number, g: number): void => {
    heaps[a]?.forEach((heap, b) => {
      if (b !== a) push(heap, cost[g * K + b] - cost[g * K + a], g);
    });
  };
  return {
    slots: K,
    edges,
    settle(a) {
      if (isSettled[a]) return;
      isSettled[a] = 1;
      heaps[a] ??= build(a);
      for (let b = 0; b < K; b++) {
        const heap = heaps[a][b];
        while (heap.group.length > 0 && flow[heap.group[0] * K + a] === 0) pop(heap);
        edges[a * K + b] = heap.group.length > 0 ? heap.key[0] : Infinity;
      }
    },
    mover: (a, b) => heaps[a][b].group[0],
    move(a, b, amount) {
      const g = heaps[a][b].group[0];
      if (flow[g * K + b] === 0) arrive(b, g);
      flow[g * K + a] -= amount;
      flow[g * K + b] += amount;
      isSettled[a] = isSettled[b] = 0;
    },
  };
}

/** Moves stitches until no slot holds more than its limit; returns the pairs looked at. */
function shiftOverflow(
  graph: BeadGraph,
  free: Float64Array,
  potential: Float64Array,
  flow: Int32Array,
): number {
  const K = graph.slots;
  const from = new Int32Array(K);
  const far = new Float64Array(K);
  const done = new Uint8Array(K);
  let work = 0;
  for (let source = 0; source < K; source++) {
    while (free[source] < 0) {
      const target = shortestPath(graph, source, free, potential, from, far, done);
      work += 2 * K * K;
      for (let k = 0; k < K; k++) potential[k] += Math.min(far[k], far[target]);
      let amount = Math.min(-free[source], free[target]);
      for (let b = target; b !== source; b = from[b]) {
        amount = Math.min(amount, flow[graph.mover(from[b], b) * K + from[b]]);
      }
      // The far end first: an edge's mover must still be the one that the path was found with.
      for (let b = target; b !== source; b = from[b]) graph.move(from[b], b, amount);
      free[source] += amount;
      free[target] -= amount;
    }
  }
  return work;
}

/** Dijkstra from a slot to the nearest one with room; fills `far` and `from`. */
function shortestPath(
  graph: BeadGraph,
  source: number,
  free: Float64Array,
  potential: Float64Array,
  from: Int32Array,
  far: Float64Array,
  done: Uint8Array,
): number {
  const { slots: K, edges } = graph;
  far.fill(Infinity);
  done.fill(0);
  far[source] = 0;
  for (;;) {
    let a = -1;
    for (let k = 0; k < K; k++) if (!done[k] && (a < 0 || far[k] < far[a])) a = k;
    if (free[a] > 0) return a;
    done[a] = 1;
    graph.settle(a);
    const soFar = far[a] + potential[a];
    for (let b = 0; b < K; b++) {
      if (done[b]) continue;
      const length = soFar + edges[a * K + b] - potential[b];
      if (length < far[b]) {
        far[b] = length;
        from[b] = a;
      }
    }
  }
}
