import { mean } from "simple-statistics";
import { buildPairs } from "../fitting/build-values.ts";
import type { Session } from "../fitting/session.ts";
import { isProblem } from "../outcome/problem.ts";
import type { GroundPoint, Group } from "../pictures/group-picture.ts";
import { outline } from "../pictures/outline.ts";
import { normalEllipse } from "../stats/normal-ellipse.ts";
import { count } from "./count.ts";
import { type Display, sideOf } from "./display.ts";

/** Where each build's shots came down, counted and not, in the units shown. */
export function groupsOf(session: Session, carry: Display, offline: Display): Group[] {
  const { table } = session;
  const carries = table.values.get("carry");
  const sides = table.values.get("offline");
  if (!carries || !sides) return [];
  const points = (name: string, keep: boolean): GroundPoint[] =>
    table.build.flatMap((build, i) => {
      if (build !== name || table.keep[i] !== keep) return [];
      const point = { offline: offline.value(sides[i]!), carry: carry.value(carries[i]!) };
      return Number.isFinite(point.offline) && Number.isFinite(point.carry) ? [point] : [];
    });
  return session.builds.map(({ name }, place) => {
    const shots = points(name, true);
    const around = ellipseOf(shots);
    return { name, place, shots, left: points(name, false), ...(around ? { outline: outline(around) } : {}) };
  });
}

function ellipseOf(shots: readonly GroundPoint[]) {
  const found = normalEllipse(
    shots.map(({ carry }) => carry),
    shots.map(({ offline }) => offline),
  );
  return isProblem(found) ? null : found;
}

/** The groups in words, for those who do not see the picture. */
export function groupText(session: Session, carry: Display, offline: Display): string {
  return session.builds
    .map(({ name }) => {
      const { x, y } = buildPairs(session.table, name, "carry", "offline");
      if (x.length === 0) return `${name}: no counted shots.`;
      const far = Math.max(...y) - Math.min(...y);
      const spread = x.length > 1 ? `, ${offline.full(far)} from leftmost to rightmost` : "";
      return `${name}: ${count(x.length, "shot")}, on average ${carry.full(mean(x))} of carry and ${sideOf(offline, mean(y))}${spread}.`;
    })
    .join(" ");
}
