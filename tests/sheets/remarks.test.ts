import { expect, it } from "vitest";
import { type Session, sessionOf } from "../../src/fitting/session.ts";
import { remarksOf } from "../../src/sheets/remarks.ts";
import { readShots } from "../../src/shots/read-shots.ts";
import { proposeOutliers } from "../../src/shots/screening.ts";
import { answer } from "../club/answer.ts";

const session = sessionOf(
  answer(
    readShots(
      ["Build,Carry (yd),Total (yd),Spin Rate (rpm)", "A,150,160,6000", "A,151,odd,x", "A,152,162,"].join(
        "\n",
      ),
    ),
  ),
  {},
);

it("remarksOf(session, far) gathers what was said of each shot's row, one sentence behind the other", () => {
  const remarks = remarksOf(session, [
    { index: 1, message: "Far out." },
    { index: 2, message: "Lonely." },
  ]);
  expect([...remarks.keys()].sort()).toEqual([1, 2]);
  expect(remarks.get(1)).toMatch(/^Row 3, column 3.*"odd".* Row 3, column 4.*"x".* Far out\.$/);
  expect(remarks.get(2)).toBe("Lonely.");
});

it("remarksOf(session, far) leaves the pasted row and the build out, beside which a remark stands", () => {
  const [first] = proposeOutliers(
    answer(
      readShots(
        ["Build,Carry (yd)", ...[150, 151, 150.5, 151.5, 110].map((carry) => `A,${carry}`)].join("\n"),
      ),
    ),
  );
  expect(first!.message).toMatch(/^Row 6 \(A\): carry 110\.0 yd /);
  const table = { ...session.table, row: [6, 7, 8], build: ["A", "A", "A"], problems: [] };
  expect(remarksOf({ ...session, table }, [{ ...first!, index: 0 }]).get(0)).toMatch(
    /^Carry 110\.0 yd lies far below/,
  );
});

it("remarksOf(session, far) says nothing of a row that is no shot", () => {
  const problems = [{ row: 1, column: 1, found: "x", message: "Of the headings." }];
  const odd: Session = { ...session, table: { ...session.table, problems } };
  expect([...remarksOf(odd, [])]).toEqual([]);
});

it("remarksOf(session, far) says first which figures of a shot were computed", () => {
  const computed = new Map([["height" as const, new Set([0])]]);
  const remarks = remarksOf({ ...session, computed }, [{ index: 0, message: "Far out." }]);
  expect(remarks.get(0)).toMatch(/omputed.* Far out\.$/);
  expect(remarks.has(2)).toBe(false);
});
