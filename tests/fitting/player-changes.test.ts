import { expect, it } from "vitest";
import { playerChanges } from "../../src/fitting/player-changes.ts";
import { sessionOf } from "../../src/fitting/session.ts";
import { readShots } from "../../src/shots/read-shots.ts";
import { answer } from "../club/answer.ts";
import { sessionOfShots } from "./session-of-shots.ts";

const words = (a: number[], b: number[]) => playerChanges(sessionOfShots({ A: a, B: b }), "A", "B")[0]!.words;

it("a change is called real, chance, or too thinly measured, by what the shots can bear", () => {
  expect(words([150, 151, 152, 150, 151], [160, 161, 162, 160, 161])).toBe(
    "10 yd more: most likely a real change",
  );
  expect(words([150, 151, 152, 150, 151], [151, 150, 153, 149, 154])).toBe("0.6 yd more: may be chance");
  expect(words([150, 155, 160, 152], [158, 153, 163, 151])).toBe("2 yd more: too few shots to settle this");
  expect(words([150, 151, 152], [160, 161, 162])).toMatch(/most likely a real change$/);
  expect(words([150], [160])).toBe("10 yd more: too few shots to say");
  expect(words([150, 150], [150, 150])).toBe("the same");
});

it("no change takes more letters than a line of its column on the page shows", () => {
  const far = sessionOfShots({ A: [150, 195, 160], B: [258, 213, 251] });
  const sides = sessionOfShots({
    A: [
      [150, -31],
      [151, 38],
      [152, 2],
    ],
    B: [
      [150, 70],
      [151, 4],
      [152, 33],
    ],
  });
  const told = [far, sides].flatMap((session) => playerChanges(session, "A", "B").map((one) => one.words));
  expect(told.join("\n")).toMatch(/to the right: too few shots to settle this/);
  for (const sentence of told) expect(sentence.length).toBeLessThan(50);
});

it("backspin is told where a table has no spin, and not beside it", () => {
  const told = (...headings: string[]) => {
    const rows = ["A", "A", "B", "B"].map((build, i) =>
      [build, ...headings.map(() => 2500 + 10 * i)].join("\t"),
    );
    const text = [["Build", ...headings].join("\t"), ...rows].join("\n");
    return playerChanges(sessionOf(answer(readShots(text))), "A", "B").map(({ metric }) => metric);
  };
  expect(told("Backspin", "Sidespin")).toEqual(["backspin"]);
  expect(told("Spin rate", "Backspin")).toEqual(["spin"]);
});
