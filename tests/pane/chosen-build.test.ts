import { expect, test } from "vitest";
import { chosenBuild } from "../../src/pane/chosen-build.ts";
import { demoSession } from "../sheets/demo-session.ts";

const session = demoSession();

test("the verdict's build goes to the bench until another is chosen by hand", () => {
  expect(chosenBuild(session, { chosen: "", set: null })).toBe("105 g mid-launch");
  expect(chosenBuild(session, { chosen: "95 g high-launch", set: null })).toBe("95 g high-launch");
});

test("a choice that has gone from the table gives way to the verdict's, and no verdict to the baseline", () => {
  expect(chosenBuild(session, { chosen: "gone", set: null })).toBe("105 g mid-launch");
  const table = { ...session.table, keep: session.table.keep.map(() => false) };
  expect(chosenBuild({ ...session, table }, { chosen: "gone", set: null })).toBe(session.baseline);
});
