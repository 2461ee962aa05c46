import type { TestPlan } from "../fitting/test-plan.ts";
import { freeSheetName, type Taken } from "./free-names.ts";
import type { WorkbookPlan } from "./plan.ts";
import { area, SheetDraft } from "./sheet-draft.ts";

/** Characters that hold most names of builds. */
const WIDTH = 18;

/** The order of a test as a sheet to print: a row a round, builds from left to right, and room for a note. */
export function testPlanWorkbook(plan: TestPlan, taken: Taken, made: string): WorkbookPlan {
  const name = freeSheetName("Test plan", taken.sheets);
  const draft = new SheetDraft(name);
  const builds = plan.rounds[0]!.length;
  const columns = builds + 2;
  draft.putAcross(0, 0, columns, "Test plan", "title", 28);
  draft.putAcross(1, 0, columns, plan.words, "sentence", 34);
  const headings = ["Round", ...Array.from({ length: builds }, (_, i) => `Ball ${i + 1}`), "Note"];
  draft.put(3, 0, [headings], "headingCentre");
  draft.put(
    4,
    0,
    plan.rounds.map((round, i) => [i + 1, ...round]),
    "plain",
  );
  draft.style(area(4, columns - 1, plan.rounds.length), "input");
  const end = 4 + plan.rounds.length;
  draft.putAcross(
    end + 1,
    0,
    columns,
    "Before the first ball: everyone behind the player, and a look at the net and the mat.",
    "small",
    14,
  );
  draft.width(0, 1, 8);
  draft.width(1, builds, WIDTH);
  draft.width(columns - 1, 1, 24);
  draft.freeze(4, 1);
  draft.print({
    landscape: true,
    area: area(0, 0, end + 2, columns),
    pagesWide: 1,
    pagesTall: 0,
    titleRows: { row: 3, rows: 1 },
    footer: `Planned ${made}`,
  });
  return { sheets: [draft.plan()], names: [], active: name };
}
