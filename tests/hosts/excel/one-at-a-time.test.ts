import { expect, test } from "vitest";
import { oneAtATime } from "../../../src/hosts/excel/one-at-a-time.ts";

test("work that is asked for while it runs is done once more after it, however often it was asked", async () => {
  const finish: (() => void)[] = [];
  const ask = oneAtATime(() => new Promise((resolve) => finish.push(resolve)));
  const first = ask();
  const others = [ask(), ask(), ask()];
  expect(finish).toHaveLength(1);
  finish[0]!();
  await expect.poll(() => finish.length).toBe(2);
  finish[1]!();
  await Promise.all([first, ...others]);
  expect(finish).toHaveLength(2);
});

test("work that is asked for the moment the last has ended is done", async () => {
  for (let later = 0; later < 8; later++) {
    let [asked, done] = [0, 0];
    const ask = oneAtATime(async () => {
      done = asked;
    });
    asked = 1;
    const first = ask();
    for (let i = 0; i < later; i++) await Promise.resolve();
    asked = 2;
    await Promise.all([first, ask()]);
    expect(done, `${later} turns later`).toBe(2);
  }
});

test("work that fails can be asked for again", async () => {
  let times = 0;
  const ask = oneAtATime(async () => {
    times++;
    throw new Error("lost");
  });
  await expect(ask()).rejects.toThrow("lost");
  await expect(ask()).rejects.toThrow("lost");
  expect(times).toBe(2);
});
