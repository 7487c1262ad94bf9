import loaded from 'highs';

// The package's types describe its CommonJS build; as an ES module its default is the loader.
const loadHighs = loaded as unknown as typeof loaded.default;
let instance: ReturnType<typeof loadHighs> | undefined;

/** A transportation problem: who may serve how many, at what cost. */
export interface Transport {
  /** Cost of one stitch of group g at slot k; [g][k]. */
  readonly cost: readonly (readonly number[])[];
  readonly supply: readonly number[];
  /** Infinity for no limit. */
  readonly limit: readonly number[];
}

/**
 * The least cost as HiGHS finds it for the linear program (Q. Huangfu and J. A. J. Hall,
 * Mathematical Programming Computation 10:119-142, 2018); undefined when it finds none feasible.
 */
export async function leastCostByHighs(problem: Transport): Promise<number | undefined> {
  const highs = await (instance ??= loadHighs());
  const { cost, supply, limit } = problem;
  const terms = cost.flatMap((row, g) => row.map((value, k) => `${fixed(value)} x${g}_${k}`));
  const groups = supply.map(
    (size, g) => `s${g}: ${limit.map((_, k) => `x${g}_${k}`).join(' + ')} = ${size}`,
  );
  const slots = limit.flatMap((most, k) =>
    most === Infinity ? [] : `l${k}: ${supply.map((_, g) => `x${g}_${k}`).join(' + ')} <= ${most}`,
  );
  const text = [
    'Minimize',
    `obj: ${lines(terms.join(' + '))}`,
    'Subject To',
    ...groups.map(lines),
    ...slots.map(lines),
    'End',
  ].join('\n');
  try {
    const solution = highs.solve(text, { output_flag: false });
    return solution.Status === 'Optimal' ? solution.ObjectiveValue : undefined;
  } catch (error) {
    instance = undefined; // After a crash an instance must not be used again.
    throw error;
  }
}

const fixed = (value: number) => value.toFixed(12);

/** The LP format takes lines of 560 characters at most. */
function lines(text: string): string {
  return text.replace(/(.{1,400})( |$)/g, '$1\n').trimEnd();
}
