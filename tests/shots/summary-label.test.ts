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
