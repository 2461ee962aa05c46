import { describe, expect, test } from "vitest";
import { chancePicture } from "../../src/pictures/chance-picture.ts";
import { flightPicture } from "../../src/pictures/flight-picture.ts";
import type { Frame } from "../../src/pictures/frame.ts";
import { groupPicture } from "../../src/pictures/group-picture.ts";
import { intervalPicture } from "../../src/pictures/interval-picture.ts";
import type { Mark } from "../../src/pictures/mark.ts";
import { svgText } from "../../src/pictures/svg-text.ts";
import { BUILD_COLORS, BUILD_MARKERS, buildColor, buildMarker } from "../../src/sheets/palette.ts";

const frame: Frame = {
  look: { ink: "#111111", quiet: "#555555", line: "#999999", surface: "#ffffff", builds: BUILD_COLORS },
  width: 296,
  id: "p",
  show: (value, decimals) => value.toFixed(decimals),
};
const groups = [
  { name: "A", place: 0, shots: [{ carry: 150, offline: 10 }], left: [{ carry: 140, offline: -10 }] },
  { name: "B", place: 1, shots: [{ carry: 160, offline: -20 }], left: [] },
];
const interval = (name: string, place: number, mean: number) => ({
  name,
  place,
  mean,
  low: mean - 2,
  high: mean + 2,
});
const axis = { title: "Carry", unit: "yd", decimals: 1 };
const units = { ahead: "yd", height: "ft", heightPerAhead: 3 };

const pictures: Record<string, (inFrame: Frame) => Mark> = {
  groups: (inFrame) => groupPicture(inFrame, groups, "yd", "words"),
  "groups with nothing in them": (inFrame) => groupPicture(inFrame, [], "yd", "words"),
  intervals: (inFrame) =>
    intervalPicture(inFrame, [interval("A", 0, 150), interval("B", 1, 160)], axis, "words"),
  "an interval of one shot": (inFrame) =>
    intervalPicture(inFrame, [{ name: "A", place: 0, mean: 150, low: null, high: null }], axis, "words"),
  chances: (inFrame) =>
    chancePicture(inFrame, [{ name: "A", place: 0, chance: 0.8, words: "80 in 100" }], "words"),
  flights: (inFrame) =>
    flightPicture(inFrame, [{ name: "A", place: 0, points: [{ ahead: 0, height: 0 }] }], units, "words"),
};

function all(mark: Mark, tag: string): Mark[] {
  const inside = mark.inside.flatMap((part) => (typeof part === "string" ? [] : all(part, tag)));
  return mark.tag === tag ? [mark, ...inside] : inside;
}

/** Where a marker stands. */
function placeOf(marker: Mark): [number, number] {
  const found = /translate\(([-\d.]+),([-\d.]+)\)/.exec(String(marker.attributes.transform))!;
  return [Number(found[1]), Number(found[2])];
}

describe("every picture", () => {
  for (const [name, draw] of Object.entries(pictures)) {
    test(`of ${name} has a name and words, no figure that is not one, and nothing outside its frame`, () => {
      for (const width of [200, 296, 640]) {
        const drawing = draw({ ...frame, width });
        expect(drawing.attributes["aria-labelledby"]).toBe("p-title p-text");
        expect(all(drawing, "title")[0]!.inside.join("")).not.toBe("");
        expect(all(drawing, "desc")[0]!.inside).toEqual(["words"]);
        expect(svgText(drawing)).not.toMatch(/NaN|Infinity|undefined/);
        for (const text of all(drawing, "text")) {
          const x = Number(text.attributes.x);
          expect(x).toBeGreaterThanOrEqual(0);
          expect(x).toBeLessThanOrEqual(width);
        }
      }
    });
  }
});

describe("a long name of a build", () => {
  const name = "120 g low-launch with the heavy counterweight, soft-stepped, 37.25 in";
  // A letter of 11 pixels is about 6 wide in the sans-serifs of the pictures, bold ones a little more.
  const endOf = (text: Mark) => {
    const words = text.inside
      .map((part) => (typeof part === "string" ? part : part.inside.join("")))
      .join("");
    return Number(text.attributes.x) + words.length * 6;
  };

  test("stays clear of the chance beside it", () => {
    const drawing = chancePicture(frame, [{ name, place: 0, chance: 0.5, words: "99 or more in 100" }], "");
    const texts = all(drawing, "text");
    const words = texts.find((text) => text.attributes["text-anchor"] === "end")!;
    for (const line of texts.filter((text) => text !== words && text.attributes.y === words.attributes.y))
      expect(endOf(line)).toBeLessThanOrEqual(frame.width - 17 * 6);
    expect(texts.length).toBeGreaterThan(2);
  });

  test("stays within the frame with the average behind it", () => {
    const drawing = intervalPicture(frame, [interval(name, 0, 161.6)], axis, "");
    for (const text of all(drawing, "text").filter((one) => one.attributes["paint-order"]))
      expect(endOf(text)).toBeLessThanOrEqual(frame.width);
  });
});

describe("the groups from above", () => {
  const markers = all(groupPicture(frame, groups, "yd", ""), "path");

  test("show farther shots higher, and shots to the right on the right", () => {
    const [left, a, b] = markers.map(placeOf) as [[number, number], [number, number], [number, number]];
    expect(a[0]).toBeGreaterThan(left[0]);
    expect(a[1]).toBeLessThan(left[1]);
    expect(b[0]).toBeLessThan(left[0]);
  });

  test("draw a yard across as long as a yard ahead", () => {
    const [left, a] = markers.map(placeOf) as [[number, number], [number, number]];
    // 20 yards across and 10 ahead lie between the two.
    expect((a[0] - left[0]) / (left[1] - a[1])).toBeCloseTo(2, 1);
  });

  test("draw shots that are not counted faintly", () => {
    expect(markers.map((marker) => marker.attributes.opacity)).toEqual([0.35, undefined, undefined]);
  });
});

describe("the order of builds", () => {
  test("gives 24 builds each a pair of colour and marker of its own", () => {
    const pairs = Array.from({ length: 24 }, (_, i) => `${buildColor(i)} ${buildMarker(i)}`);
    expect(new Set(pairs).size).toBe(24);
    expect(buildColor(BUILD_COLORS.length)).toBe(BUILD_COLORS[0]);
    expect(buildMarker(BUILD_MARKERS.length)).toBe(BUILD_MARKERS[0]);
  });
});

test("a picture as text is escaped, also what a player typed", () => {
  const drawing = chancePicture(
    frame,
    [{ name: '<b>"&\u0001', place: 0, chance: 0.5, words: "50 in 100" }],
    "a < b",
  );
  expect(svgText(drawing)).toContain("&lt;b&gt;&quot;&amp;<");
  expect(svgText(drawing)).toContain('<desc id="p-text">a &lt; b</desc>');
  expect(svgText(drawing)).toMatch(/^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg"/);
});
