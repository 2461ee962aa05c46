import { seededRandom } from "../../src/stats/seeded-random.ts";

const HEADINGS = [
  "Build",
  "Shot",
  "Club Speed",
  "Ball Speed",
  "Smash Factor",
  "Launch Angle",
  "Launch Direction",
  "Spin Rate",
  "Height",
  "Landing Angle",
  "Carry",
  "Offline",
];

/** A made-up table of 12 columns as it is pasted: tabs, no quotes, eight builds by turns of ten shots. */
export function manyShots(shots: number, builds = 8): string {
  const random = seededRandom(12);
  const lines = [HEADINGS.join("\t")];
  for (let shot = 0; shot < shots; shot++) {
    const build = Math.floor(shot / 10) % builds;
    const club = 84 + build + 2 * random.normal();
    const ball = club * 1.38 + random.normal();
    lines.push(
      [
        `${70 + 5 * build} g ${build % 2 ? "stiff" : "regular"}`,
        shot + 1,
        club.toFixed(1),
        ball.toFixed(1),
        (ball / club).toFixed(2),
        (16 + random.normal()).toFixed(1),
        (2 * random.normal()).toFixed(1),
        (6200 + 250 * random.normal()).toFixed(0),
        (92 + 4 * random.normal()).toFixed(1),
        (47 + random.normal()).toFixed(1),
        (165 + build + 5 * random.normal()).toFixed(1),
        (8 * random.normal()).toFixed(1),
      ].join("\t"),
    );
  }
  return lines.join("\n");
}
