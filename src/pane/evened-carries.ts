import { mean } from "simple-statistics";
import { buildValues } from "../fitting/build-values.ts";
import { sameConditions } from "../fitting/same-conditions.ts";
import type { Session } from "../fitting/session.ts";
import { sessionAir } from "../fitting/session-air.ts";
import { strikeAdjusted } from "../fitting/strike-adjusted.ts";
import { isProblem } from "../outcome/problem.ts";

/** The heading of carries in standard air. */
export const STANDARD_AIR = "Standard air";

/** A column of carries: what was taken out of them, and a carry a build, in yards; null where there is none. */
export interface EvenedCarries {
  readonly heading: string;
  /** What the column means, a sentence; empty where the heading says it all. */
  readonly meaning: string;
  readonly carries: readonly (number | null)[];
}

/**
 * The builds' mean carries as hit, and beside them with differences that are not the builds' taken out: the luck of the
 * strike, and, where the air was stated, the air and then the club speed too. Empty where there is nothing to take out.
 */
export function evenedCarries(session: Session, speedWords: (mph: number) => string): EvenedCarries[] {
  const names = session.builds.map(({ name }) => name);
  const struck = strikeAdjusted(session);
  const air = sessionAir(session.air);
  const stated = !isProblem(air) && air.stated;
  const same = stated ? sameConditions(session) : [];
  const flown = isProblem(same) ? [] : same;
  const speed = flown[0]?.clubSpeed;
  const column = <Row extends { readonly build: string }>(
    heading: string,
    meaning: string,
    rows: readonly Row[],
    carry: (row: Row) => number | null,
  ): EvenedCarries => ({
    heading,
    meaning,
    carries: names.map((name) => {
      const row = rows.find(({ build }) => build === name);
      return row ? carry(row) : null;
    }),
  });
  const columns = [
    column(
      "Strike evened out",
      `Strike evened out: had every build been struck as well as the session's average, judged by ${isProblem(struck) ? "" : struck[0]?.by}. A build that itself makes strikes better or worse is helped or hurt by it.`,
      isProblem(struck) ? [] : struck,
      ({ adjusted }) => adjusted,
    ),
    column(
      STANDARD_AIR,
      "Standard air: the same strikes at sea level and 15 °C (59 °F), by the flight model.",
      flown,
      ({ sameAir }) => sameAir,
    ),
    column(
      "and one club speed",
      speed ? `One club speed: in that air, every swing at ${speedWords(speed)}.` : "",
      flown,
      ({ sameAirSameSpeed }) => sameAirSameSpeed,
    ),
  ].filter(({ carries }) => carries.some((carry) => carry !== null));
  if (columns.length === 0) return [];
  const hit = names.map((build) => ({ build, values: buildValues(session.table, build, "carry") }));
  return [column("As hit", "", hit, ({ values }) => (values.length === 0 ? null : mean(values))), ...columns];
}
