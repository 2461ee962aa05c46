import type { Air } from "../../src/flight/air/air.ts";
import { airAt } from "../../src/flight/air/air-at.ts";
import type { CoefficientModel } from "../../src/flight/ball/coefficient-model.ts";
import { EXTENDED_BEARMAN_HARVEY } from "../../src/flight/ball/extended-bearman-harvey.ts";
import { SMITS_SMITH } from "../../src/flight/ball/smits-smith.ts";
import { calibrateModels } from "../../src/flight/calibration/calibrate-models.ts";
import { type FlightOptions, flyBall } from "../../src/flight/trajectory/fly-ball.ts";
import { normalizeCarry, REFERENCE_AIR } from "../../src/flight/uses/normalize-carry.ts";
import { isProblem, type Outcome } from "../../src/outcome/problem.ts";
import { seededRandom } from "../../src/stats/seeded-random.ts";
import { BY_REYNOLDS } from "../flight/ball/by-reynolds.ts";
import { BY_SPIN_RATIO } from "../flight/ball/by-spin-ratio.ts";
import type { BenchLine } from "./run.ts";

const YARD = 0.9144;
const TRUTHS = [SMITS_SMITH, EXTENDED_BEARMAN_HARVEY, BY_SPIN_RATIO, BY_REYNOLDS];
/** Ball speed, launch, spin. The first carries 150 yd by the second model in sea-level air. */
const CLUBS = {
  iron: [45, 18, 6500],
  driver: [70, 12, 2600],
  wedge: [38, 28, 9000],
  longIron: [58, 14, 4200],
};
type Club = keyof typeof CLUBS;

/**
 * Sessions of 24 shots hit at 1,600 m, each carry corrected to sea level as a session's is, and held against the carry
 * that the same truth has there. Measured carry, height and landing angle scatter by 1.5 m, 1 m and 1 degree.
 */
export function* corrections(): Generator<BenchLine> {
  const all: { plain: number; calibrated: number }[] = [];
  for (const truth of TRUTHS) {
    const byClub = Object.keys(CLUBS).map((club) => [club, errorsOf(truth, club as Club)] as const);
    all.push(...byClub.map(([, errors]) => errors));
    const { carryYd, uncorrected, calibrated } = byClub[0]![1];
    yield {
      name: `1,600 m to sea level, truth ${truth.name}, the ${Math.round(carryYd)} yd iron, yd at worst`,
      uncorrected: rounded(uncorrected),
      figure: rounded(calibrated),
      goal: 1,
      met: calibrated < 1,
      plain: Object.fromEntries(byClub.map(([club, errors]) => [club, rounded(errors.plain)])),
      calibrated: Object.fromEntries(byClub.map(([club, errors]) => [club, rounded(errors.calibrated)])),
      model: Object.fromEntries(byClub.map(([club, errors]) => [club, errors.model])),
    };
  }
  const square = (key: "plain" | "calibrated") =>
    Math.sqrt(all.reduce((sum, errors) => sum + errors[key] ** 2, 0) / all.length);
  const [plain, calibrated] = [square("plain"), square("calibrated")];
  yield {
    name: "1,600 m to sea level, root mean square over truths and clubs, yd",
    figure: rounded(calibrated),
    plain: rounded(plain),
    goal: rounded(plain),
    met: calibrated < plain,
  };
}

/** The worst shot of a session, yards, corrected by the plain model and by the one that is calibrated to it. */
function errorsOf(truth: CoefficientModel, club: Club) {
  const [speed, launch, spin] = CLUBS[club] as [number, number, number];
  const thin = sure(airAt(1600));
  const random = seededRandom(16);
  const shots = Array.from({ length: 24 }, (_, i) => {
    const strike = {
      speed: speed + Math.sin(i * 5),
      launch: launch + Math.cos(i * 2),
      spin: spin * (1 + 0.05 * Math.sin(i * 3)),
    };
    const { carry, height, landingAngle } = sure(flyBall(strike, thin, { model: truth }));
    const measured = {
      strike,
      carry: carry + 1.5 * random.normal(),
      height: height + random.normal(),
      landingAngle: landingAngle + random.normal(),
    };
    return { strike, measured, carry, thick: carryIn(REFERENCE_AIR, strike, truth) };
  });
  const found = sure(
    calibrateModels(
      shots.map(({ measured }) => measured),
      thin,
    ),
  );
  // The correction is what is held to the truth here, so it works on the carry without its scatter.
  const worst = (options: FlightOptions) =>
    Math.max(
      ...shots.map(({ strike, carry, thick }) =>
        Math.abs(sure(normalizeCarry(carry, strike, thin, REFERENCE_AIR, options)) - thick),
      ),
    ) / YARD;
  const mean = (of: (shot: (typeof shots)[number]) => number) =>
    shots.reduce((sum, shot) => sum + of(shot), 0) / shots.length / YARD;
  return {
    carryYd: mean((shot) => shot.thick),
    uncorrected: mean((shot) => shot.carry - shot.thick),
    plain: worst({}),
    calibrated: worst({ model: found.model, factors: found.factors }),
    model: found.model.name,
  };
}

function carryIn(air: Air, strike: Parameters<typeof flyBall>[0], model: CoefficientModel): number {
  return sure(flyBall(strike, air, { model })).carry;
}

function sure<T>(outcome: Outcome<T>): T {
  if (isProblem(outcome)) throw new Error(outcome.message);
  return outcome as T;
}

function rounded(value: number): number {
  return Number(value.toFixed(2));
}
