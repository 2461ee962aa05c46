import { isProblem } from "../../outcome/problem.ts";
import type { Delivery } from "./delivery.ts";
import { spinAxis } from "./spin-axis.ts";
import { spinLoft } from "./spin-loft.ts";

/** One shot's figures that say something about each other, degrees. What a table lacks is left out or NaN. */
export interface ImpactColumns extends Partial<Delivery> {
  readonly spinLoft?: number;
  readonly launch?: number;
  readonly direction?: number;
  readonly spinAxis?: number;
}

export interface Contradiction {
  /** Index of the shot in the list. */
  readonly shot: number;
  readonly check: "spinLoft" | "launch" | "direction" | "spinAxis";
  readonly found: number;
  /** One sentence: what does not fit what. */
  readonly message: string;
}

/** How far two figures may disagree before it is said, degrees: common practice, no source. */
const SLACK = { spinLoft: 1.5, launch: 1.5, direction: 1.5, spinAxis: 3 } as const;

/**
 * Looks for figures of a table that contradict each other: a spin loft that is not the angle between face and head, a
 * launch angle outside attack to dynamic loft, a launch direction outside path to face, a spin axis that leans against
 * face less path. Each check is made where its figures are there. A driver struck off the middle may fail the last one
 * honestly (gear effect).
 */
export function checkColumns(shots: readonly ImpactColumns[]): Contradiction[] {
  return shots.flatMap((shot, index) => contradictionsOf(shot).map((one) => ({ shot: index, ...one })));
}

function contradictionsOf(shot: ImpactColumns): Omit<Contradiction, "shot">[] {
  const found: Omit<Contradiction, "shot">[] = [];
  const { dynamicLoft, attack, face, path } = shot;
  if (has(dynamicLoft) && has(attack)) {
    const delivery = has(face) && has(path) ? { dynamicLoft, attack, face, path } : { dynamicLoft, attack };
    const expected = spinLoft(delivery);
    if (has(shot.spinLoft) && !isProblem(expected) && Math.abs(shot.spinLoft - expected) > SLACK.spinLoft) {
      const message = `spin loft ${shot.spinLoft} does not fit the ${expected.toFixed(1)} of loft and attack`;
      found.push({ check: "spinLoft", found: shot.spinLoft, message });
    }
    if (has(shot.launch) && outside(shot.launch, attack, dynamicLoft, SLACK.launch)) {
      const message = `launch ${shot.launch} lies outside attack ${attack} to dynamic loft ${dynamicLoft}`;
      found.push({ check: "launch", found: shot.launch, message });
    }
  }
  if (has(face) && has(path)) {
    if (has(shot.direction) && outside(shot.direction, path, face, SLACK.direction)) {
      const message = `direction ${shot.direction} lies outside path ${path} to face ${face}`;
      found.push({ check: "direction", found: shot.direction, message });
    }
    const expected = spinAxis({
      dynamicLoft: has(dynamicLoft) ? dynamicLoft : 20,
      attack: has(attack) ? attack : 0,
      face,
      path,
    });
    const against = !isProblem(expected) && Math.sign(expected) !== Math.sign(shot.spinAxis ?? 0);
    if (
      has(shot.spinAxis) &&
      against &&
      Math.min(Math.abs(shot.spinAxis), Math.abs(expected)) > SLACK.spinAxis
    ) {
      const message = `spin axis ${shot.spinAxis} leans against face to path ${(face - path).toFixed(1)}`;
      found.push({ check: "spinAxis", found: shot.spinAxis, message });
    }
  }
  return found;
}

function has(value: number | undefined): value is number {
  return Number.isFinite(value);
}

function outside(value: number, one: number, other: number, slack: number): boolean {
  return value < Math.min(one, other) - slack || value > Math.max(one, other) + slack;
}
