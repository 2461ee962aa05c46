import { expect, test } from "vitest";
import { forgetPlayer, keepSession } from "../../src/pane/ledger-keeping.ts";
import { STOPPED, unlessStopped } from "../../src/pane/unless-stopped.ts";
import { demoSession } from "../ledger/demo-rows.ts";
import { memoryHost } from "./memory-host.ts";

const never = new Promise<never>(() => {});

test("a reading that is not stopped comes to what it comes to", async () => {
  const stop = new AbortController();
  expect(await unlessStopped(Promise.resolve("text"), stop.signal)).toBe("text");
  expect(await unlessStopped(Promise.resolve("text"), undefined)).toBe("text");
  await expect(unlessStopped(Promise.reject(new Error("broken")), stop.signal)).rejects.toThrow("broken");
});

test("nobody waits for a reading once it is stopped, before it began or while it goes on", async () => {
  expect(await unlessStopped(never, AbortSignal.abort())).toBe(STOPPED);
  const stop = new AbortController();
  const waiting = unlessStopped(never, stop.signal);
  stop.abort();
  expect(await waiting).toBe(STOPPED);
});

test("keeping a session and taking a player out are stopped while they read, and write nothing", async () => {
  const host = memoryHost();
  await keepSession(host, demoSession());
  const before = structuredClone(host.held);
  const slow = { ...host, tableCells: () => never };
  for (const work of [
    (signal: AbortSignal) => keepSession(slow, demoSession({ date: "2026-12-01" }), {}, null, { signal }),
    (signal: AbortSignal) => forgetPlayer(slow, demoSession().player, { signal }),
  ]) {
    const stop = new AbortController();
    const waiting = work(stop.signal);
    stop.abort();
    expect(await waiting).toBe(STOPPED);
  }
  expect(host.held).toEqual(before);
});
