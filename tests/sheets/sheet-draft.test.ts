import { describe, expect, it } from "vitest";
import { area, formula, SheetDraft } from "../../src/sheets/sheet-draft.ts";

const drawn = (draw: (draft: SheetDraft) => void) => {
  const draft = new SheetDraft("One");
  draw(draft);
  return draft.plan();
};

describe("SheetDraft", () => {
  it("of which nothing was asked is an empty sheet in sight", () => {
    expect(drawn(() => {})).toEqual({
      ...{
        name: "One",
        hidden: false,
        blocks: [],
        styles: [],
        formats: [],
        widths: [],
        heights: [],
        merges: [],
      },
      ...{ tables: [], ticks: [], validations: [], conditions: [], charts: [], notes: [] },
    });
    expect(new SheetDraft("Two", true).plan().hidden).toBe(true);
  });

  it("puts cells, empty texts as empty cells, and looks and formats over all of them", () => {
    const plan = drawn((draft) =>
      draft.put(
        2,
        1,
        [
          ["a", ""],
          [0, false],
        ],
        "figure",
        "0.0",
      ),
    );
    expect(plan.blocks).toEqual([
      {
        row: 2,
        column: 1,
        cells: [
          ["a", null],
          [0, false],
        ],
      },
    ]);
    expect(plan.styles).toEqual([{ area: area(2, 1, 2, 2), style: "figure" }]);
    expect(plan.formats).toEqual([{ area: area(2, 1, 2, 2), format: "0.0" }]);
    const plain = drawn((draft) => draft.put(2, 1, [["a"]]));
    expect([plain.styles, plain.formats]).toEqual([[], []]);
  });

  it("puts nothing where there are no cells", () => {
    for (const cells of [[], [[]], [[], []]]) {
      const plan = drawn((draft) => draft.put(2, 1, cells, "figure", "0.0"));
      expect([plan.blocks, plan.styles, plan.formats]).toEqual([[], [], []]);
    }
  });

  it("puts a text across columns as one merged cell, as high as is asked", () => {
    const plan = drawn((draft) => draft.putAcross(2, 1, 4, "words", "group", 20));
    expect(plan.blocks).toEqual([{ row: 2, column: 1, cells: [["words"]] }]);
    expect(plan.merges).toEqual([area(2, 1, 1, 4)]);
    expect(plan.styles).toEqual([{ area: area(2, 1, 1, 4), style: "group" }]);
    expect(plan.heights).toEqual([{ row: 2, rows: 1, points: 20 }]);
    const single = drawn((draft) => draft.putAcross(2, 1, 1, "words", "group"));
    expect([single.merges, single.heights]).toEqual([[], []]);
  });

  it("keeps all else as it was asked for", () => {
    const table = { name: "T", area: area(0, 0, 2, 2) };
    const condition = { area: area(0, 0), formula: "TRUE", style: "good" } as const;
    const validation = { area: area(0, 0), kind: "number", least: 0, most: 1, message: "no" } as const;
    const print = { landscape: true, pagesWide: 1, pagesTall: 0 };
    const plan = drawn((draft) => {
      draft.merge(area(1, 1, 1, 2));
      draft.width(3, 2, 9);
      draft.height(4, 12, 3);
      draft.table(table);
      draft.tick(area(1, 0, 5));
      draft.validate(validation);
      draft.condition(condition);
      draft.note(1, 2, "read this");
      draft.freeze(4, 1);
      draft.print(print);
    });
    expect(plan).toMatchObject({
      merges: [area(1, 1, 1, 2)],
      widths: [{ column: 3, columns: 2, characters: 9 }],
      heights: [{ row: 4, rows: 3, points: 12 }],
      tables: [table],
      ticks: [{ row: 1, column: 0, rows: 5, columns: 1 }],
      validations: [validation],
      conditions: [condition],
      notes: [{ row: 1, column: 2, text: "read this" }],
      frozen: { rows: 4, columns: 1 },
      print,
    });
  });
});

it("area(...) is a single cell where nothing else is said, and formula(...) keeps its answer", () => {
  expect(area(3, 4)).toEqual({ row: 3, column: 4, rows: 1, columns: 1 });
  expect(formula("1+1", 2)).toEqual({ formula: "1+1", value: 2 });
});
