/** The solver of linear and mixed-integer programmes that the engine is handed. Its WebAssembly is loaded when it is first asked for. */
import loadHighs, { type Highs, type InitOptions, type Model } from 'highs';
import {
  checkProgramme,
  type LinearProgramme,
  type Solve,
  type Solved,
} from '../core/numerics/linear-programme.ts';

/** Ends a search in whole numbers at this share of the value, where nothing else is asked for. */
const usualGap = 1e-6;
const usualSeconds = 10;

/** Slack that a solution may have against its limits, in the programme's own units, relative to their size. */
const slackAllowed = 1e-5;

let loading: Promise<Solve> | null = null;

/**
 * Loads the solver, once. In a browser `wasmUrl` says where its WebAssembly lies; in Node the package finds its own.
 * A load that fails is tried again the next time.
 */
export function loadSolver(wasmUrl?: string): Promise<Solve> {
  loading ??= start(wasmUrl).catch((error: unknown) => {
    loading = null;
    throw error;
  });
  return loading;
}

async function start(wasmUrl: string | undefined): Promise<Solve> {
  const options: InitOptions = {
    print: () => {},
    printErr: () => {},
    ...(wasmUrl === undefined ? {} : { locateFile: () => wasmUrl }),
  };
  const highs = await loadHighs(options);
  return (programme, asked) =>
    solveWith(highs, programme, asked?.gap ?? usualGap, asked?.seconds ?? usualSeconds);
}

function solveWith(highs: Highs, programme: LinearProgramme, gap: number, seconds: number): Solved {
  checkProgramme(programme);
  const { columns, rows } = programme;
  const crossed = [...columns, ...rows].some((l) => l.low > l.high);
  if (crossed) return { status: 'infeasible' };
  // A column of whole numbers that has none between its limits is refused by the solver, not answered.
  if (columns.some((c) => c.whole === true && Math.ceil(c.low - 1e-9) > Math.floor(c.high + 1e-9)))
    return { status: 'infeasible' };
  if (columns.length === 0)
    return rows.some((r) => r.low > 0 || r.high < 0)
      ? { status: 'infeasible' }
      : { status: 'optimal', value: 0, x: [], rowPrices: rows.map(() => 0), columnPrices: [] };
  const whole = columns.some((c) => c.whole === true);
  const starts = new Int32Array(rows.length + 1);
  const terms = rows.flatMap((r, i) => {
    const kept = r.terms.filter(([, a]) => a !== 0);
    starts[i + 1] = starts[i]! + kept.length;
    return kept;
  });
  return highs.withModel(
    {
      numCols: columns.length,
      numRows: rows.length,
      colCost: columns.map((c) => c.cost),
      colLower: columns.map((c) => within(highs, c.low)),
      colUpper: columns.map((c) => within(highs, c.high)),
      rowLower: rows.map((r) => within(highs, r.low)),
      rowUpper: rows.map((r) => within(highs, r.high)),
      matrix: {
        format: 'csr',
        numRows: rows.length,
        numCols: columns.length,
        starts,
        indices: Int32Array.from(terms, ([j]) => j),
        values: Float64Array.from(terms, ([, a]) => a),
      },
      ...(whole ? { integrality: Int32Array.from(columns, (c) => (c.whole === true ? 1 : 0)) } : {}),
    },
    (model): Solved => {
      model.options.set({
        output_flag: false,
        time_limit: seconds,
        mip_rel_gap: gap,
        mip_abs_gap: 1e-9,
        primal_feasibility_tolerance: 1e-9,
        dual_feasibility_tolerance: 1e-9,
        mip_feasibility_tolerance: 1e-9,
      });
      const { modelStatus } = model.run();
      return read(highs, model, programme, modelStatus, whole);
    },
  );
}

const within = (highs: Highs, limit: number) =>
  limit === Infinity ? highs.infinity : limit === -Infinity ? -highs.infinity : limit;

function read(
  highs: Highs,
  model: Model,
  programme: LinearProgramme,
  status: number,
  whole: boolean,
): Solved {
  const is = highs.constants.modelStatus;
  if (status === is.infeasible) return { status: 'infeasible' };
  if (status === is.unbounded) return { status: 'unbounded' };
  if (status === is.unboundedOrInfeasible) return apart(highs, model, programme);
  const timed = status === is.timeLimit || status === is.solutionLimit || status === is.iterationLimit;
  if (status !== is.optimal && !timed)
    throw new Error(`the solver ended with status ${status}, which is no answer`);
  const { colValue, rowDual, colDual } = model.getSolution();
  // Whole numbers come with the rounding of the search in them.
  const x = programme.columns.map((c, j) => (c.whole === true ? Math.round(colValue[j]!) : colValue[j]!));
  if (x.some((v) => !Number.isFinite(v)) || !holds(programme, x)) {
    if (timed) return { status: 'stopped', value: null, x: null };
    throw new Error('the solver’s answer does not hold its own limits');
  }
  const value = programme.columns.reduce((sum, c, j) => sum + c.cost * x[j]!, 0);
  if (timed) return { status: 'stopped', value, x };
  return {
    status: 'optimal',
    value,
    x,
    rowPrices: whole ? null : [...rowDual],
    columnPrices: whole ? null : [...colDual],
  };
}

/** Presolving may not tell the two apart; without anything to minimise only infeasibility is left. */
function apart(highs: Highs, model: Model, { columns }: LinearProgramme): Solved {
  columns.forEach((_, j) => {
    model.changeColCost(j, 0);
  });
  const { modelStatus } = model.run();
  return { status: modelStatus === highs.constants.modelStatus.infeasible ? 'infeasible' : 'unbounded' };
}

/** The answer is looked at again: nothing is taken from a solver on trust. */
function holds({ columns, rows }: LinearProgramme, x: readonly number[]): boolean {
  const inside = (value: number, low: number, high: number, size: number) =>
    value >= low - slackAllowed * size && value <= high + slackAllowed * size;
  return (
    columns.every((c, j) => inside(x[j]!, c.low, c.high, 1 + Math.abs(x[j]!))) &&
    rows.every((r) => {
      let value = 0;
      let size = 1;
      for (const [j, a] of r.terms) {
        value += a * x[j]!;
        size += Math.abs(a * x[j]!);
      }
      return inside(value, r.low, r.high, size);
    })
  );
}
