import { readFileSync } from "node:fs";
import { beforeEach, describe, expect, test, vi } from "vitest";
import { associateCommands, COMMAND_NAMES } from "../../../src/hosts/excel/commands.ts";

type Action = (event?: { completed(): void }) => Promise<void>;

const actions = new Map<string, Action>();
const order: string[] = [];

beforeEach(() => {
  actions.clear();
  order.length = 0;
  vi.stubGlobal("Office", {
    actions: { associate: (name: string, action: Action) => actions.set(name, action) },
    addin: { showAsTaskpane: async () => void order.push("shown") },
  });
});

const completed = { completed: () => void order.push("completed") };

describe("the commands", () => {
  test("of the manifest all have their action", () => {
    associateCommands({ compareSelection() {}, fillBenchSheet() {} });
    expect([...actions.keys()]).toEqual([...COMMAND_NAMES]);
    const manifest = readFileSync(new URL("../../../manifest.xml", import.meta.url), "utf8");
    for (const [, name] of manifest.matchAll(/<FunctionName>(.*)<\/FunctionName>/g)) {
      expect(actions.has(name!)).toBe(true);
    }
  });

  test("show the pane, do their work and give the button back, in this order", async () => {
    associateCommands({ compareSelection: async () => void order.push("compared"), fillBenchSheet() {} });
    await actions.get("compareSelection")!(completed);
    expect(order).toEqual(["shown", "compared", "completed"]);
  });

  test("give the button back when their work fails", async () => {
    associateCommands({
      compareSelection() {},
      fillBenchSheet: async () => {
        throw new Error("no");
      },
    });
    await expect(actions.get("fillBenchSheet")!(completed)).rejects.toThrow("no");
    expect(order).toEqual(["shown", "completed"]);
  });

  test("work from a key, which hands over no event", async () => {
    associateCommands({ compareSelection() {}, fillBenchSheet() {} });
    await actions.get("openPane")!();
    expect(order).toEqual(["shown"]);
  });
});
