import { setImmediate } from "node:timers/promises";
import { airOfDensity } from "../../src/flight/air/air.ts";
import { BEARMAN_HARVEY } from "../../src/flight/ball/bearman-harvey.ts";
import type { CoefficientModel } from "../../src/flight/ball/coefficient-model.ts";
import { EXTENDED_BEARMAN_HARVEY } from "../../src/flight/ball/extended-bearman-harvey.ts";
import { SMITS_SMITH } from "../../src/flight/ball/smits-smith.ts";
import { flyBall, TOLERANCE } from "../../src/flight/trajectory/fly-ball.ts";
import type { Strike } from "../../src/flight/trajectory/strike.ts";
import { normalizeTable } from "../../src/flight/uses/normalize-table.ts";
import { isProblem, type Outcome } from "../../src/outcome/problem.ts";
import { corrections } from "./corrections.ts";
import { flyByOdex } from "./flight-by-odex.ts";
import type { BenchLine } from "./run.ts";

const YARD = 0.9144;
const AIR = airOfDensity(1.225);
/** Driver to wedge, 100 shots of a bag, a little scattered. */
const BAG: readonly Strike[] = Array.from({ length: 100 }, (_, i) => ({
  speed: 40 + 0.4 * i,
  launch: 28 - 0.18 * i + 3 * Math.sin(i * 7),
  spin: 10_000 - 76 * i + 300 * Math.cos(i * 3),
  axis: 5 * Math.sin(i),
}));

type Carry = (strike: Strike, tolerance: number) => number;

/** The flights of this project beside a general package, and the corrections made with them. */
export async function* bench(): AsyncGenerator<BenchLine> {
  for (const model of [EXTENDED_BEARMAN_HARVEY, SMITS_SMITH, BEARMAN_HARVEY]) yield atEqualError(model);
  yield halving();
  yield await normalizedTable();
  yield* corrections();
}

/** Trajectories a second, each solver at the loosest tolerance that keeps all carries within 0.01 yd. */
function atEqualError(model: CoefficientModel): BenchLine {
  const goal = 20;
  const exact = BAG.map((strike) => sure(flyBall(strike, AIR, { model, tolerance: 1e-10 })).carry);
  const options = { model, tolerance: 1 };
  const own: Carry = (strike, tolerance) => {
    options.tolerance = tolerance;
    return sure(flyBall(strike, AIR, options)).carry;
  };
  const general: Carry = (strike, tolerance) => flyByOdex(strike, AIR, model, tolerance).carry;
  const [ownAt, generalAt] = [loosest(own, exact), loosest(general, exact)];
  const rounds = Array.from({ length: 7 }, () => [
    seconds(own, ownAt.tolerance, 60),
    seconds(general, generalAt.tolerance, 6),
  ]);
  const [ownTime, generalTime] = [median(rounds.map((r) => r[0]!)), median(rounds.map((r) => r[1]!))];
  const ratio = generalTime / ownTime;
  return {
    name: `trajectories at 0.01 yd beside odex, ${model.name}`,
    ratio: rounded(ratio, 1),
    goal,
    met: ratio >= goal,
    aSecond: Math.round(1 / ownTime),
    odexASecond: Math.round(1 / generalTime),
    errorYd: rounded(ownAt.error, 4),
    odexErrorYd: rounded(generalAt.error, 4),
    tolerance: ownAt.tolerance,
    odexTolerance: generalAt.tolerance,
  };
}

/** Goes down a ladder of tolerances, 50 to a decade, to the first that keeps every carry within 0.01 yd. */
function loosest(carry: Carry, exact: readonly number[]): { tolerance: number; error: number } {
  for (let rung = 0; ; rung += 1) {
    const tolerance = Number((10 ** (-1 - rung / 50)).toPrecision(3));
    const error = Math.max(...BAG.map((strike, i) => Math.abs(carry(strike, tolerance) - exact[i]!))) / YARD;
    if (error <= 0.01 || tolerance < 1e-11) return { tolerance, error };
  }
}

/** Processor seconds for one trajectory, over the bag `times` times. */
function seconds(carry: Carry, tolerance: number, times: number): number {
  const before = process.cpuUsage();
  for (let time = 0; time < times; time += 1) for (const strike of BAG) carry(strike, tolerance);
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1e6 / (times * BAG.length);
}

function halving(): BenchLine {
  let worst = 0;
  for (let mph = 40; mph <= 190; mph += 10) {
    for (let launch = 0; launch <= 60; launch += 5) {
      for (let spin = 0; spin <= 12_000; spin += 1000) {
        const strike = { speed: mph * 0.44704, launch, spin };
        const half = sure(flyBall(strike, AIR, { tolerance: TOLERANCE / 2 })).carry;
        worst = Math.max(worst, Math.abs(sure(flyBall(strike, AIR)).carry - half) / YARD);
      }
    }
  }
  return {
    name: "halving the tolerance moves carry, yd",
    figure: rounded(worst, 4),
    goal: 0.02,
    met: worst < 0.02,
  };
}

/** 100,000 shots normalised in slices, the event loop let run after each. */
async function normalizedTable(): Promise<BenchLine> {
  const size = 100_000;
  const strike = (index: number) => BAG[index % BAG.length]!;
  const work = normalizeTable({
    size,
    carry: new Float64Array(size).fill(150),
    strike,
    air: airOfDensity(1.05),
  });
  let reports = 0;
  let longest = 0;
  const began = performance.now();
  for (let from = began, turn = work.next(); !turn.done; turn = work.next()) {
    longest = Math.max(longest, performance.now() - from);
    reports += 1;
    await setImmediate();
    from = performance.now();
  }
  const taken = (performance.now() - began) / 1000;
  return {
    name: "100,000 shots normalised with progress shown",
    seconds: rounded(taken, 2),
    aSecond: Math.round(size / taken),
    reports,
    longestHoldMs: rounded(longest, 1),
    goal: 100,
    met: longest < 100 && reports >= 100,
  };
}

function sure<T>(outcome: Outcome<T>): T {
  if (isProblem(outcome)) throw new Error(outcome.message);
  return outcome as T;
}

function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[values.length >> 1]!;
}

function rounded(value: number, digits: number): number {
  return Number(value.toFixed(digits));
}
