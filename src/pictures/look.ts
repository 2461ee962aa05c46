import { BUILD_COLORS } from "../sheets/palette.ts";
import { INK, RULE } from "../sheets/styles.ts";

/** The colours of a drawing: fixed ones on a sheet, those of the theme in the pane. */
export interface Look {
  readonly ink: string;
  readonly quiet: string;
  readonly line: string;
  readonly surface: string;
  /** By the build's place, beginning again after the last. */
  readonly builds: readonly string[];
}

/** For sheets and print: the house colours on white. */
export const PAPER_LOOK: Look = {
  ink: INK,
  quiet: "#4c5960",
  line: RULE,
  surface: "#ffffff",
  builds: BUILD_COLORS,
};

/** For pages that set the theme's colours as style variables, as the pane does. */
export const THEME_LOOK: Look = {
  ink: "var(--ink)",
  quiet: "var(--quiet)",
  line: "var(--line)",
  surface: "var(--surface)",
  builds: BUILD_COLORS.map((_, place) => `var(--build${place})`),
};

/** The colour of the build at this place. */
export function lookColor(look: Look, place: number): string {
  return look.builds[place % look.builds.length]!;
}
