import { describe, expect, test } from "vitest";
import { type ShopFindings, shopFindings } from "../../src/ledger/shop-findings.ts";
import { shopWorkbook } from "../../src/ledger/shop-sheet.ts";
import { NOTHING_TAKEN } from "../../src/sheets/free-names.ts";
import { atOnce } from "../../src/slices/at-once.ts";
import { simulatedLedger } from "./simulated-ledger.ts";

const MADE = "2026-11-25 10:00 UTC";
const found = atOnce(shopFindings(simulatedLedger(200, 3)));

/** All that the sheet says, line by line. */
function lines(findings: ShopFindings): (readonly unknown[])[] {
  const [sheet] = shopWorkbook(findings, NOTHING_TAKEN, MADE).sheets;
  const blocks = [...sheet!.blocks].sort((a, b) => a.row - b.row);
  return blocks.flatMap(({ cells }) => cells.map((row) => row.filter((cell) => cell !== null)));
}
const words = (findings: ShopFindings) => lines(findings).flat().join("\n");

describe("the Shop sheet", () => {
  test("says every warning before any figure", () => {
    const said = words(found);
    for (const warning of found.warnings) {
      expect(said).toContain(warning);
      expect(said.indexOf(warning)).toBeLessThan(said.indexOf("Did clear verdicts hold?"));
    }
  });

  test("has a line for each effect with its limits, in the ledger's own units", () => {
    const carry = found.weight.find(({ metric, band }) => metric === "carry" && band === "all players")!;
    expect(lines(found)).toContainEqual([
      "all players",
      "Carry",
      carry.perTenGrams,
      carry.low,
      carry.high,
      "yd",
      carry.players,
      carry.rows,
    ]);
    expect(lines(found).filter((line) => line.length === 8)).toHaveLength(found.weight.length + 1);
  });

  test("speaks in metres to those who think in them, bands of club speed included", () => {
    const metric = atOnce(shopFindings(simulatedLedger(200, 3), "metric-kmh"));
    const [line] = lines(metric).filter(([band, label]) => band === "all players" && label === "Carry");
    const carry = found.weight.find((one) => one.metric === "carry" && one.band === "all players")!;
    expect(line![2]).toBeCloseTo(carry.perTenGrams * 0.9144, 12);
    expect(line![5]).toBe("m");
    // 75 and 90 miles an hour are 120.7 and 144.8 kilometres an hour.
    expect(words(metric)).toContain("club speed 121 to 145 km/h");
  });

  test("says how many builds that never won it does not list", () => {
    const neverWon = Array.from({ length: 33 }, (_, i) => ({ build: `b${i}`, sessions: 9, chance: i / 100 }));
    const said = words({ ...found, neverWon });
    expect(said).toContain("b29");
    expect(said).not.toContain("b30");
    expect(said).toContain("3 builds more");
    expect(words({ ...found, neverWon: neverWon.slice(0, 30) })).not.toContain("not listed");
  });

  test("says what could not be said, of a shop with no rows at all as well", () => {
    const said = words(atOnce(shopFindings([])));
    expect(said).toContain("There are not enough players who hit different weights.");
    expect(said).toContain("No player has come back to tell.");
    expect(said).toContain("No build was tried in three sessions");
  });
});
