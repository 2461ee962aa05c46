import { expect, test } from "vitest";
import { compareBuilds } from "../../src/fitting/compare-builds.ts";
import { displayOf } from "../../src/pane/display.ts";
import { figuresFor } from "../../src/pane/figures.ts";
import { flightsOf, flightText } from "../../src/pane/flights.ts";
import { without } from "../fitting/simulated-flights.ts";
import { demoSession } from "../sheets/demo-session.ts";

const figures = figuresFor("en-GB");
const [carry, height] = [displayOf("carry", "us", figures), displayOf("height", "us", figures)];
const textOf = (session: ReturnType<typeof demoSession>) =>
  flightText(flightsOf(session, compareBuilds(session), carry, height), carry, height);

test("the flights in words are those of the picture: where they peak and where they end", () => {
  // Means of the demo table's 105 g shots: 162.7 yd, 88.5 ft.
  expect(textOf(demoSession())).toMatch(/105 g mid-launch flies 8[89].ft high and 162\.7.yd far\./);
});

test("they are told also where the table has neither height nor carry, as the model flies them", () => {
  const told = textOf(without(demoSession(), "height", "carry"));
  expect(told.match(/flies \d+.ft high and \d+\.\d.yd far/g)).toHaveLength(4);
});

test("a build that is not drawn is not told of", () => {
  expect(textOf(without(demoSession(), "launch"))).toBe("");
});
