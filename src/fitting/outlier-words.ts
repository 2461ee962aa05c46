import { mean } from "simple-statistics";
import { isProblem } from "../outcome/problem.ts";
import { proposeOutliers } from "../shots/screening.ts";
import { hodgesLehmannCentre } from "../stats/index.ts";
import { buildValues } from "./build-values.ts";
import { shownFigure } from "./plain-sentences.ts";
import type { Session } from "./session.ts";

/** More figures than this make no sentence; long sessions have hundreds. */
const MOST_NAMED = 6;

/**
 * A sentence for each build with a carry far from its others: the average that the shot pulls, and beside it the
 * centre of Hodges and Lehmann (1963, Annals of Mathematical Statistics 34, 598-611), which it hardly moves. Whether
 * the shot counts is the fitter's choice.
 */
export function outlierWords(session: Session): string[] {
  const far = proposeOutliers(session.table, ["carry"]);
  return session.builds.flatMap(({ name }) => {
    const mine = far.filter(({ build }) => build === name);
    if (mine.length === 0) return [];
    const values = buildValues(session.table, name, "carry");
    const centre = hodgesLehmannCentre(values);
    if (isProblem(centre)) return [];
    const shown = (value: number) => shownFigure(value, "carry", session.units);
    const named = mine.slice(0, MOST_NAMED).map(({ value }) => shown(value));
    const others = mine.length - named.length;
    const shots = [...named, ...(others > 0 ? [`${others} more`] : [])].join(" and ");
    const [average, middle] = [mean(values), centre].map(shown);
    const pull =
      average === middle
        ? `its average is ${average} with or without that pull`
        : `its average is ${average}, its middle without that pull ${middle}`;
    const many = mine.length === 1 ? "a shot" : `${mine.length} shots`;
    return [`${name} has ${many} far from the rest (${shots}): ${pull}. Untick what was not a fair strike.`];
  });
}
