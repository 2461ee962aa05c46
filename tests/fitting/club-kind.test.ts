import { expect, it } from "vitest";
import { clubKindIn } from "../../src/fitting/club-kind.ts";
import { readShots } from "../../src/shots/read-shots.ts";
import { answer } from "../club/answer.ts";

const kindOf = (...lines: string[]) => clubKindIn(answer(readShots(lines.join("\n"))), "");

it("a club that no word names is told by launch and spin", () => {
  expect(kindOf("Launch angle\tSpin rate", "13\t2600", "12.5\t2750")).toEqual({
    kind: "driver",
    guessed: true,
  });
});

it("backspin tells the club where a table has back- and sidespin instead of spin", () => {
  expect(kindOf("Launch angle\tBackspin\tSidespin", "13\t2600\t200", "12.5\t2750\t-300").kind).toBe("driver");
});
