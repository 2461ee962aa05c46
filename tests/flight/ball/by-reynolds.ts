import { airOfDensity } from "../../../src/flight/air/air.ts";
import { BALL } from "../../../src/flight/ball/ball.ts";
import { type CoefficientModel, POINT } from "../../../src/flight/ball/coefficient-model.ts";
import { EXTENDED_BEARMAN_HARVEY } from "../../../src/flight/ball/extended-bearman-harvey.ts";

const AIR = airOfDensity(1.225);
/** Reynolds number of 1 m/s. */
const TUNNEL = (BALL.diameter * AIR.density) / AIR.viscosity;

/**
 * The table of the default model read by Reynolds number and spin ratio, as similarity has it, rather than by speed and
 * spin: the same ball in sea-level air, another one in thin air. A truth to hold corrections to.
 */
export const BY_REYNOLDS: CoefficientModel = {
  name: "Bearman-Harvey 1976 by Reynolds number",
  source: EXTENDED_BEARMAN_HARVEY.source,
  coefficients(point) {
    const [speed, spin] = [point[POINT.speed]!, point[POINT.spin]!];
    const inTunnel = point[POINT.reynolds]! / TUNNEL;
    point[POINT.speed] = inTunnel;
    point[POINT.spin] = spin * (inTunnel / speed);
    EXTENDED_BEARMAN_HARVEY.coefficients(point);
    point[POINT.speed] = speed;
    point[POINT.spin] = spin;
  },
  measured: EXTENDED_BEARMAN_HARVEY.measured,
};
