import { describe, expect, it } from "vitest";
import { type TextStore, textKeeper } from "../../../src/hosts/workbench/keep-text.ts";

function browserStore(): NonNullable<TextStore> & { readonly texts: Map<string, string> } {
  const texts = new Map<string, string>();
  return {
    texts,
    getItem: (key) => texts.get(key) ?? null,
    setItem: (key, text) => void texts.set(key, text),
    removeItem: (key) => void texts.delete(key),
  };
}

const full: TextStore = {
  getItem: () => null,
  removeItem: () => {},
  setItem: () => {
    throw new DOMException("full", "QuotaExceededError");
  },
};

describe("texts that the page keeps", () => {
  it("are there for the next visit", async () => {
    const store = browserStore();
    expect(await textKeeper(store).keep("draft", "words")).toBe(true);
    expect(await textKeeper(store).recall("draft")).toBe("words");
  });

  it("are forgotten on null", async () => {
    const store = browserStore();
    const keeper = textKeeper(store);
    await keeper.keep("draft", "words");
    expect(await keeper.keep("draft", null)).toBe(true);
    expect(await keeper.recall("draft")).toBeNull();
    expect(store.texts.size).toBe(0);
  });

  it.each([
    ["keeps nothing", null],
    ["is full", full],
  ])("last until the page is closed where the browser %s, and that is said", async (_, store) => {
    const keeper = textKeeper(store);
    expect(await keeper.keep("draft", "words")).toMatchObject({ kind: "unavailable" });
    expect(await keeper.recall("draft")).toBe("words");
    expect(await keeper.keep("draft", null)).toBe(true);
    expect(await keeper.recall("draft")).toBeNull();
  });

  it("are the newest, though only an older one could be kept", async () => {
    const store = browserStore();
    const keeper = textKeeper(store);
    await keeper.keep("draft", "old");
    store.setItem = () => {
      throw new DOMException("full", "QuotaExceededError");
    };
    await keeper.keep("draft", "new");
    expect(await keeper.recall("draft")).toBe("new");
  });
});
