import { describe, expect, it } from "vitest";
import { isSummaryLabel } from "../../src/shots/summary-label.ts";

describe("isSummaryLabel(cell, builds)", () => {
  // Labels as tables carry them: common practice, no source.
  it.each([
    "Average",
    "AVG",
    "Avg.",
    "Mean:",
    "Std Dev",
    "Std. Dev.",
    "SD",
    "Standard deviation",
    "Deviation",
    "Min",
    "Max",
    "Median",
    "Total",
    "Average (10 shots)",
    "Average 10 shots",
    "Average: 152.3",
    "Avg of all shots",
    "Session average",
    "Average 95 g mid",
    "95 g mid - Avg",
    "Ø",
    "σ",
    "Durchschnitt",
    "Mittelwert",
    "Standardabweichung",
    "Std.-Abw.",
    "Moyenne",
    "Écart-type",
    "Promedio",
    "Desviación estándar",
    "Mínimo",
  ])("takes %j for a summary", (cell) => {
    expect(isSummaryLabel(cell, ["95 g mid"])).toBe(true);
  });

  it.each([
    "Mean Machine",
    "@SUM(1,1)",
    "=Average(B2:B9)",
    "Max 95",
    "Total Flex",
    "Average Joe",
    "Minimum Torque",
    "95 g mid",
    "",
    "7",
    "Build 1",
    "n",
    "constructor",
    "Shot 3",
  ])("takes %j for no summary", (cell) => {
    expect(isSummaryLabel(cell, ["95 g mid"])).toBe(false);
  });
});

describe("what stands beside a summary word", () => {
  it.each([
    "Shots 10 average",
    "Average [kept]",
    "{All} average",
    " ± ",
    "Average shots",
    "Grand total",
    "Mean 12.5",
    "Avg = 12.5 yd",
  ])("%j is a summary", (cell) => {
    expect(isSummaryLabel(cell, [])).toBe(true);
  });

  it.each([
    "Shots",
    "All the shots",
    "Average 10",
    "10 average",
    "Shots 10a average",
    "Average of a big fat day",
    `Average${" ".repeat(114)}`,
    "Average (a",
  ])("%j is none", (cell) => {
    expect(isSummaryLabel(cell, [])).toBe(false);
  });

  it("may be the name of a build on either side, with nothing but a summary word left", () => {
    expect(isSummaryLabel("Red wand average", ["Red wand"])).toBe(true);
    expect(isSummaryLabel("Average red wand", ["", "Red wand"])).toBe(true);
    expect(isSummaryLabel("Red wand hit well", ["Red wand"])).toBe(false);
    expect(isSummaryLabel("Hit well, red wand", ["Red wand"])).toBe(false);
    expect(isSummaryLabel("Red wand", ["Red wand"])).toBe(false);
  });
});
