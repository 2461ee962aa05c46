import { expect, test } from "vitest";
import { readSetFile } from "../../src/club/read-set.ts";
import { isProblem } from "../../src/outcome/problem.ts";
import { faultyLine } from "../../src/pane/faulty-line.ts";

const SET = "target; swingweight; D2\ngrip; 50\nclub; length; shaft\n7i; 37; 105\n8i; short; 105";

test("a problem of a set file is shown beside the line that the reader names", () => {
  const problem = readSetFile(SET);
  if (!isProblem(problem)) throw new Error("the set was understood");
  const fault = faultyLine(SET, problem.message);
  expect(fault).toMatchObject({ line: 5, found: "8i; short; 105" });
  expect(fault!.message).toMatch(/^length is "short"/);
});

test("a problem of a club is shown beside that club's line", () => {
  expect(faultyLine(SET, "Club 7i: the head would weigh nothing.")).toEqual({
    line: 4,
    found: "7i; 37; 105",
    message: "Club 7i: the head would weigh nothing.",
  });
});

test("a problem of the whole set names no line", () => {
  expect(faultyLine(SET, "The set has no clubs.")).toBeNull();
  expect(faultyLine(SET, "Club 3i: not here.")).toBeNull();
});
