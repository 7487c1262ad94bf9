// The choice of beads as a mixed-integer program for HiGHS, a general solver: the peer to agree
// with and to be quicker than.
import loadHighs from 'highs';

let loaded;

/**
 * Least Σ weight · difference over all choices of at most `most` beads. `problem` as in
 * src/core/choice/matrix.ts. Undefined when HiGHS gives up within `seconds`, or crashes: its
 * instance is of no use after that and is thrown away.
 */
export async function leastByHighs(problem, seconds = 60) {
  loaded ??= await loadHighs();
  try {
    const options = { time_limit: seconds, mip_rel_gap: 1e-9, mip_abs_gap: 1e-9 };
    const solution = loaded.solve(program(problem), options);
    return solution.Status === 'Optimal' ? solution.ObjectiveValue : undefined;
  } catch {
    loaded = undefined;
    return undefined;
  }
}

/** The strong formulation in CPLEX LP text: y_j opens bead j, x_i_j serves place i from it. */
function program({ places: n, beads, difference, weight, most, kept }) {
  const cost = [];
  const rows = [];
  const indices = Array.from({ length: beads }, (_, j) => j);
  for (let i = 0; i < n; i++) {
    rows.push(`${indices.map((j) => `x${i}_${j}`).join(' + ')} = 1`);
    for (const j of indices) {
      cost.push(`${weight[i] * difference[j * n + i]} x${i}_${j}`);
      rows.push(`x${i}_${j} - y${j} <= 0`);
    }
  }
  rows.push(`${indices.map((j) => `y${j}`).join(' + ')} <= ${most}`);
  for (let j = 0; j < kept; j++) rows.push(`y${j} = 1`);
  return [
    `Minimize\n cost: ${cost.join('\n + ')}`,
    `Subject To\n ${rows.join('\n ')}`,
    `Binary\n ${indices.map((j) => `y${j}`).join(' ')}`,
    'End',
  ].join('\n');
}
