import { expect, test } from "vitest";
import { readCommandLine } from "../../../src/hosts/file/command-line.ts";
import { answer } from "../../club/answer.ts";

test("--air takes altitude, temperature, pressure and humidity, any of them", () => {
  const line = answer(readCommandLine(["shots.txt", "--air", "altitude=1600, temperature=25"]));
  expect(line.air).toEqual({ altitude: 1600, temperature: 25 });
  expect(answer(readCommandLine(["shots.txt"])).air).toBeNull();
});

test("--air names the part that is wrong", () => {
  const message = (air: string) => readCommandLine(["--air", air]) as { message: string };
  expect(message("height=1600").message).toContain('--air has "height=1600"');
  expect(message("altitude=").message).toContain('--air has "altitude="');
  expect(message("pressure=29.9").message).toContain("pressure is 29.9");
  expect(message("humidity=140").message).toContain("humidity is 140");
});
