import { webDarkTheme, webLightTheme } from "@fluentui/tokens";
import { describe, expect, test } from "vitest";
import { BUILD_COLORS_DARK, DARK, HOUSE, LIGHT, SHARED } from "../../src/pane/theme.ts";
import { BUILD_COLORS } from "../../src/sheets/palette.ts";
import { contrast } from "./contrast.ts";

const NAMES = {
  surface: "colorNeutralBackground1",
  raised: "colorNeutralBackground2",
  ink: "colorNeutralForeground1",
  quiet: "colorNeutralForeground3",
  line: "colorNeutralStroke1",
  edge: "colorNeutralStrokeAccessible",
} as const;

describe("the pane's theme", () => {
  test("takes its greys from the host's design tokens, light and dark", () => {
    for (const [ours, theirs] of Object.entries(NAMES)) {
      expect(LIGHT[ours as keyof typeof LIGHT]).toBe(webLightTheme[theirs]);
      expect(DARK[ours as keyof typeof DARK]).toBe(webDarkTheme[theirs]);
    }
    expect([SHARED.corner, SHARED.quick, SHARED.text]).toEqual([
      webLightTheme.borderRadiusMedium,
      webLightTheme.durationFast,
      webLightTheme.fontSizeBase300,
    ]);
  });

  // WCAG 2.2, 1.4.3: text 4.5 to 1; 1.4.11: what carries meaning in a picture 3 to 1.
  test("keeps words readable on every ground they stand on", () => {
    for (const [ground, house] of [[LIGHT, HOUSE.light] as const, [DARK, HOUSE.dark] as const]) {
      for (const ink of [ground.ink, ground.quiet, house.accent])
        expect(contrast(ink, ground.surface)).toBeGreaterThanOrEqual(4.5);
      expect(contrast(house.warnInk, house.warnFill)).toBeGreaterThanOrEqual(4.5);
      expect(contrast(house.onAccent, house.accent)).toBeGreaterThanOrEqual(4.5);
    }
  });

  test("keeps every build's colour apart from the ground", () => {
    for (const color of BUILD_COLORS) expect(contrast(color, LIGHT.surface)).toBeGreaterThanOrEqual(3);
    for (const color of BUILD_COLORS_DARK) expect(contrast(color, DARK.surface)).toBeGreaterThanOrEqual(3);
    expect(BUILD_COLORS_DARK).toHaveLength(BUILD_COLORS.length);
  });
});
