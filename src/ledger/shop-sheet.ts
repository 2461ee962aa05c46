import { unitText } from "../sheets/display-session.ts";
import { freeSheetName, type Taken } from "../sheets/free-names.ts";
import type { CellValue, WorkbookPlan } from "../sheets/plan.ts";
import { area, SheetDraft } from "../sheets/sheet-draft.ts";
import { metricOf } from "../shots/metrics.ts";
import { showing } from "../shots/showing.ts";
import type { ShopFindings } from "./shop-findings.ts";

const COLUMNS = 8;

/** Builds that never won are listed the least likely first; the rest would be chance mostly. */
const LISTED = 30;

/** The Shop sheet: what the ledger says, with its limits, and in the same type size what it cannot say. */
export function shopWorkbook(findings: ShopFindings, taken: Taken, made: string): WorkbookPlan {
  const name = freeSheetName("Shop", taken.sheets);
  const draft = new SheetDraft(name);
  const { sessions, players, held, weight, missing, warnings, units } = findings;
  draft.put(0, 0, [["What the shop's data say"]], "title");
  draft.put(
    1,
    0,
    [
      [
        `${counted(sessions, "session")} of ${counted(players, "player")}, worked out ${made}; it does not follow later rows.`,
      ],
    ],
    "subtitle",
  );
  let row = 3;
  const heading = (text: string) => {
    draft.putAcross(row, 0, COLUMNS, text, "group");
    row++;
  };
  const sentences = (list: readonly string[], style: "sentence" | "warning") => {
    for (const text of list) {
      draft.putAcross(row, 0, COLUMNS, text, style, text.length > 100 ? 32 : 18);
      row++;
    }
    row++;
  };
  heading("Before you read on");
  sentences(warnings, "warning");
  heading("Did clear verdicts hold?");
  sentences([held ? heldWords(held) : "No player has come back to tell."], "sentence");
  heading("Ten grams more in the shaft, the same player and kind of club");
  if (weight.length > 0) {
    draft.put(
      row,
      0,
      [["Among", "Figure", "Change", "From", "To", "Unit", "Players", "Rows"]],
      "headingLeft",
    );
    const lines = weight.map((one): CellValue[] => {
      const metric = metricOf(one.metric);
      const [change, from, to] = [one.perTenGrams, one.low, one.high].map(showing(metric, units));
      return [one.band, metric.label, change!, from!, to!, unitText(metric, units), one.players, one.rows];
    });
    draft.put(row + 1, 0, lines, "plain");
    draft.format(area(row + 1, 2, lines.length, 3), "+0.00;-0.00;0.00");
    row += lines.length + 1;
    sentences(
      [
        "From and To are 95 % limits; where they lie on both sides of 0, the data do not say which way it goes.",
      ],
      "sentence",
    );
  } else sentences(["There are not enough players who hit different weights."], "sentence");
  heading("Tried, and never the one");
  if (findings.neverWon.length > 0) {
    draft.put(row, 0, [["Build", "Sessions", "Chance"]], "headingLeft");
    const lines = findings.neverWon
      .slice(0, LISTED)
      .map(({ build, sessions: n, chance }): CellValue[] => [build, n, chance]);
    const more = findings.neverWon.length - lines.length;
    draft.put(row + 1, 0, lines, "plain");
    draft.format(area(row + 1, 2, lines.length), "0.000");
    row += lines.length + 1;
    sentences(
      [
        "Chance is how often a build as good as those beside it would be chosen in none of these sessions.",
        ...(more > 0
          ? [
              `${counted(more, "build")} more, each with a greater chance, ${more === 1 ? "is" : "are"} not listed.`,
            ]
          : []),
      ],
      "sentence",
    );
  } else sentences(["No build was tried in three sessions without being chosen once."], "sentence");
  if (missing.length > 0) {
    heading("What could not be said");
    sentences(missing, "sentence");
  }
  draft.width(0, 1, 30);
  draft.width(1, COLUMNS - 1, 14);
  draft.print({ landscape: false, pagesWide: 1, pagesTall: 0, footer: "What the shop's data say" });
  return { sheets: [draft.plan()], names: [], active: name };
}

const counted = (count: number, what: string) => `${count} ${what}${count === 1 ? "" : "s"}`;

function heldWords({ held, lookedAt, low, high, unseen }: NonNullable<ShopFindings["held"]>): string {
  const share = (value: number) => `${Math.round(100 * value)}`;
  return `${held} of ${lookedAt} clear verdicts held when the player came back; the true share lies between ${share(low)} and ${share(high)} in 100. ${unseen} more were never looked at again.`;
}
