import { BUILD_COLORS } from "../sheets/palette.ts";

/** The colours of a drawing, which never names one itself. */
export interface Look {
  readonly ink: string;
  readonly quiet: string;
  readonly line: string;
  readonly surface: string;
  /** By the build's place, beginning again after the last. */
  readonly builds: readonly string[];
}

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
