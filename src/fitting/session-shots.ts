import { UNIT_SIZES } from "../flight/cells/unit-sizes.ts";
import { checkStrike } from "../flight/trajectory/check-strike.ts";
import type { Strike } from "../flight/trajectory/strike.ts";
import type { MeasuredShot } from "../flight/uses/measured-shot.ts";
import { REFERENCE_AIR } from "../flight/uses/normalize-carry.ts";
import type { MetricKey } from "../shots/metrics.ts";
import type { ShotTable } from "../shots/shot-table.ts";

/** A shot of a table as the flight model takes it: metres and metres a second. */
export interface FlownShot extends MeasuredShot {
  /** Place in the table, counted from 0. */
  readonly index: number;
  /** m/s; NaN where it was not measured. */
  readonly clubSpeed: number;
}

/**
 * The shot at a place of the table; null where ball speed, launch angle or spin is missing or no flight can be computed
 * from them. A missing spin axis or direction counts as straight. Where a table has back- and sidespin instead of spin
 * and axis, they are put together.
 */
export function sessionShot(table: ShotTable, index: number): FlownShot | null {
  const at = (key: MetricKey) => table.values.get(key)?.[index] ?? Number.NaN;
  const back = at("backspin");
  const side = orNought(at("sidespin"));
  const axis = at("spinAxis");
  const strike: Strike = {
    speed: at("ballSpeed") * UNIT_SIZES.mph,
    launch: at("launch"),
    spin: Number.isNaN(at("spin")) ? Math.hypot(back, side) : at("spin"),
    axis: Number.isNaN(axis) && back > 0 ? (Math.atan2(side, back) * 180) / Math.PI : orNought(axis),
    direction: orNought(at("direction")),
  };
  if (checkStrike(strike, REFERENCE_AIR)) return null;
  return {
    index,
    strike,
    clubSpeed: at("clubSpeed") * UNIT_SIZES.mph,
    carry: at("carry") * UNIT_SIZES.yd,
    height: at("height") * UNIT_SIZES.ft,
    landingAngle: at("landingAngle"),
  };
}

/** All shots that can be flown; only the kept ones of one build where it is named. */
export function sessionShots(table: ShotTable, build?: string): FlownShot[] {
  const shots: FlownShot[] = [];
  for (let index = 0; index < table.size; index += 1) {
    if (build !== undefined && (!table.keep[index] || table.build[index] !== build)) continue;
    const shot = sessionShot(table, index);
    if (shot) shots.push(shot);
  }
  return shots;
}

function orNought(value: number): number {
  return Number.isNaN(value) ? 0 : value;
}
