import { invalid, type Outcome } from "../outcome/problem.ts";

/** Figures of each build, in the order in which builds first come. */
export interface BuildFigures {
  readonly build: string;
  readonly figures: number[];
}

/**
 * Two lists of a spreadsheet, a build and a figure a shot, sorted by build. Builds alike but for case are one. A
 * blank figure (NaN) is left out. An exact 0 counts only where some figure is negative, as offline and angles have
 * it: of what is always positive a 0 is a blank cell in disguise, which one platform hands over as 0.
 */
export function shotsByBuild(builds: readonly string[], values: readonly number[]): Outcome<BuildFigures[]> {
  if (builds.length !== values.length) {
    return invalid(
      `builds has ${builds.length} cells and values has ${values.length}; they should be of equal length.`,
    );
  }
  const signed = values.some((value) => value < 0);
  const found = new Map<string, BuildFigures>();
  builds.forEach((name, i) => {
    const value = values[i]!;
    if (name === "" || Number.isNaN(value) || (value === 0 && !signed)) return;
    const key = name.toLowerCase();
    const list = found.get(key) ?? { build: name, figures: [] };
    list.figures.push(value);
    found.set(key, list);
  });
  return [...found.values()];
}
