/**
 * The dozen values of the host's own design that the pane is built on, and the house colours beside them. The names
 * on the right are those of @fluentui/tokens; a test holds the values against that package, which is far too large
 * to load here.
 */
export const LIGHT = {
  surface: "#ffffff", // colorNeutralBackground1
  raised: "#fafafa", // colorNeutralBackground2
  ink: "#242424", // colorNeutralForeground1
  quiet: "#616161", // colorNeutralForeground3
  line: "#d1d1d1", // colorNeutralStroke1
  edge: "#616161", // colorNeutralStrokeAccessible
} as const;

export const DARK = {
  surface: "#292929",
  raised: "#1f1f1f",
  ink: "#ffffff",
  quiet: "#adadad",
  line: "#666666",
  edge: "#adadad",
} as const;

export const SHARED = {
  corner: "4px", // borderRadiusMedium
  quick: "150ms", // durationFast
  ease: "cubic-bezier(0.33,0,0.67,1)", // curveEasyEase
  font: "'Segoe UI', 'Segoe UI Web (West European)', -apple-system, BlinkMacSystemFont, Roboto, 'Helvetica Neue', sans-serif", // fontFamilyBase
  small: "12px", // fontSizeBase200
  text: "14px", // fontSizeBase300
  large: "16px", // fontSizeBase400
} as const;

/** House colours of the pane: bench green where it must be read on paper, a lighter one in the dark. */
export const HOUSE = {
  light: { accent: "#1d5c4a", onAccent: "#ffffff", tint: "#e8f0ec", warnInk: "#7a3b00", warnFill: "#fdf0dc" },
  dark: { accent: "#7fcbb2", onAccent: "#10241d", tint: "#22332d", warnInk: "#ffd9a3", warnFill: "#43310f" },
} as const;

/** Build colours that stand out on the dark surface, in the order of BUILD_COLORS. */
export const BUILD_COLORS_DARK: readonly string[] = [
  "#6fc9ab",
  "#f49a6b",
  "#7fb5f0",
  "#c79be6",
  "#dfc05a",
  "#b4bec6",
  "#f286a8",
  "#5cc8d6",
];
