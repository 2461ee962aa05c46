import { describe, expect, test } from "vitest";
import { decide } from "../../src/fitting/decide.ts";
import { playerWords } from "../../src/fitting/player-words.ts";
import type { Session } from "../../src/fitting/session.ts";
import { comparisonWorkbook } from "../../src/sheets/comparison-workbook.ts";
import { NOTHING_TAKEN } from "../../src/sheets/free-names.ts";
import { PLAYER_SESSIONS } from "../fitting/player-sessions.ts";
import { cellAt, findText } from "./cell-at.ts";
import { demoSession } from "./demo-session.ts";

const bookOf = (session: Session) => comparisonWorkbook(session, NOTHING_TAKEN, "2026-11-25 10:00").sheets;
const pageOf = (session: Session) => bookOf(session).find(({ name }) => name === "Player")!;

test("the player's page says that a player is left-handed, and nothing of it of others", () => {
  const left = pageOf(PLAYER_SESSIONS.leaning);
  const { row, column } = findText(left, "Plays");
  expect(cellAt(left, row, column + 1)).toBe("Left-handed");
  expect(() => findText(pageOf(demoSession()), "Plays")).toThrow();
});

const SESSIONS: [string, Session][] = [
  ["the demo session", demoSession()],
  ...Object.entries(PLAYER_SESSIONS),
];

describe.each(SESSIONS)("the player's page of %s", (_, session) => {
  const page = pageOf(session);
  const texts = page.blocks.flatMap(({ cells }) => cells.flat()).filter((cell) => typeof cell === "string");

  test("carries every sentence for the player, word for word", () => {
    const { tried, suggestion, why, sure, meanings } = playerWords(session, decide(session));
    for (const sentence of [...tried, suggestion, ...why, ...sure, ...meanings])
      expect(texts).toContain(sentence);
  });

  test("has room for shop, date and names", () => {
    for (const label of ["Player", "Date", "Shop", "Fitted by"]) {
      const { row, column } = findText(page, label);
      const styled = page.styles.find(({ area }) => area.row === row && area.column === column + 1);
      expect(styled?.style, label).toBe("input");
    }
  });

  test("shows the averages of the Comparison sheet, by its own formulas", () => {
    const { row } = findText(page, "What changed, on average");
    const comparison = bookOf(session)[0]!;
    const known = comparison.blocks.flatMap(({ cells }) => cells.flat());
    for (const column of [4, 5]) {
      const cell = cellAt(page, row + 1, column);
      expect(known).toContainEqual(cell);
    }
  });

  test("prints on one upright page", () => {
    expect(page.print).toMatchObject({ landscape: false, pagesWide: 1, pagesTall: 1 });
  });

  test("shows the group and the chances, each with a text for those who do not see it", () => {
    expect(page.charts.map(({ name }) => name).sort()).toEqual([
      "Chance of being best",
      "Where the shots landed",
    ]);
    for (const { alt } of page.charts) expect(alt).not.toBe("");
  });
});
