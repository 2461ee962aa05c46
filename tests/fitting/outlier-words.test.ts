import { expect, it } from "vitest";
import { outlierWords } from "../../src/fitting/outlier-words.ts";
import { sessionOfShots } from "./session-of-shots.ts";

it("a shot that pulls the average is told with the average and what it is without that pull", () => {
  const [sentence] = outlierWords(sessionOfShots({ A: [150, 151, 152, 150, 151, 110] }));
  expect(sentence).toMatch(/\(110 yd\): its average is 144 yd, its middle without that pull 15\d yd\./);
});

it("a shot that moves no digit of the average is told so, and not as two figures that are the same", () => {
  const [sentence] = outlierWords(sessionOfShots({ A: [150.2, 150.1, 150.2, 150.1, 150.2, 152] }));
  expect(sentence).toContain("its average is 150 yd with or without that pull.");
});
