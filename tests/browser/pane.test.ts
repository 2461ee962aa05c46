import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { DEMO_TEXT } from "../../src/fitting/demo.ts";
import { aroundPane } from "./around-pane.ts";
import { axeFaults } from "./axe-faults.ts";
import { pasteMany } from "./long-table.ts";
import { openAll, type PaneLook } from "./pane-page.ts";

const PATIENCE = 60_000;

const openPane = aroundPane();

const status = (page: Page) => page.locator(".make [role=status]");
const paste = (page: Page, text: string) => page.locator("#shots-text").fill(text);

describe("the pane", { timeout: PATIENCE }, () => {
  test("leads by keyboard alone from a pasted table to sheets", async () => {
    const page = await openPane();
    const focused = () => page.evaluate(() => document.activeElement?.id);
    while ((await focused()) !== "shots-text") await page.keyboard.press("Tab");
    await page.keyboard.insertText(DEMO_TEXT);
    await page.locator("#findings").waitFor();
    for (let presses = 0; (await focused()) !== "make-sheets" && presses < 60; presses++)
      await page.keyboard.press("Tab");
    expect(await focused()).toBe("make-sheets");
    await page.keyboard.press("Enter");
    await expect.poll(() => status(page).textContent()).toBe("Added Comparison, Player and Shots.");
    const sheets = await page.evaluate(() =>
      globalThis.paneTest.host!.written[0]!.sheets.map(({ name }) => name),
    );
    expect(sheets).toEqual(["Comparison", "Player", "Shots", "Workings"]);
    expect(await focused()).toBe("make-sheets");
  });

  test("shows the demo ready to run on a first visit where asked to", async () => {
    const page = await openPane({}, { demo: true });
    expect(await page.locator("#shots-text").inputValue()).toBe(DEMO_TEXT);
    expect(await page.locator("#make-sheets").isEnabled()).toBe(true);
    expect(await page.locator(".steps li").count()).toBe(3);
  });

  test("shows another player's table under no name of the demo's once it is pasted over the demo", async () => {
    const page = await openPane({}, { demo: true });
    await openAll(page);
    const player = page.getByLabel("Player", { exact: true });
    expect(await player.inputValue()).toBe("Rowan Tilsley (invented)");
    await paste(page, "Build\tCarry\nA\t150\nA\t152\nB\t160\nB\t161");
    await expect.poll(() => player.inputValue()).toBe("");
    await page.locator("#make-sheets").click();
    await expect.poll(() => status(page).textContent()).toMatch(/^Added /);
    const printed = await page.evaluate(() => JSON.stringify(globalThis.paneTest.host!.written));
    expect(printed).not.toContain("invented");
    await page.locator("#undo").click();
    await expect.poll(() => player.inputValue()).toBe("Rowan Tilsley (invented)");
  });

  test("follows a tick with figures and picture, and undo brings both back", async () => {
    const page = await openPane();
    await paste(page, DEMO_TEXT);
    await openAll(page);
    const kept = page.locator(".figures thead th").nth(1).locator("small");
    const picture = () => page.locator("[aria-labelledby^=groups]").innerHTML();
    const before = await picture();
    expect(await kept.textContent()).toBe("6 of 6");
    await page.getByLabel(/Shot 17/).uncheck();
    expect(await kept.textContent()).toBe("5 of 6");
    expect(await picture()).not.toBe(before);
    await page.locator("#undo").click();
    expect(await picture()).toBe(before);
  });

  test("takes in more rows of the same table as they are pasted", async () => {
    const page = await openPane();
    await paste(page, "Build\tCarry\nA\t150\nA\t152");
    await page.locator("#more-shots").fill("B\t160");
    await page.locator("#more-shots").press("Enter");
    await expect.poll(() => page.locator("#reading .brief").textContent()).toBe("3 shots, 2 builds");
    expect(await page.locator("#shots-text").inputValue()).toBe("Build\tCarry\nA\t150\nA\t152\nB\t160");
  });

  test("takes the cells that are selected", async () => {
    const page = await openPane();
    await page.getByRole("button", { name: "Take the selected cells" }).click();
    await expect.poll(() => page.locator("#reading .brief").textContent()).toBe("2 shots, 2 builds");
  });

  test("puts a column right with one choice", async () => {
    const page = await openPane();
    await paste(page, "Build\tCarry\tRun\nA\t150\t10\nA\t152\t12");
    await openAll(page);
    await page.getByLabel("What Run holds").selectOption({ label: "Peak height" });
    await page.getByLabel("Unit of Run").selectOption("m");
    // 11 m is 36.09 ft: 1 ft = 0.3048 m (international yard and pound agreement, 1959).
    await expect
      .poll(() => page.locator(".figures tr", { hasText: "Peak height" }).textContent())
      .toMatch(/ft36±/);
  });

  test("is left as it was when the page is opened again", async () => {
    const first = await openPane();
    await paste(first, DEMO_TEXT);
    await openAll(first);
    await first.getByLabel("Player", { exact: true }).fill("Rowan");
    await first.getByLabel("Player", { exact: true }).press("Tab");
    await first.getByLabel(/Shot 17/).uncheck();
    const texts = () => first.evaluate(() => Object.fromEntries(globalThis.paneTest.host!.texts));
    await expect.poll(async () => Object.values(await texts()).join()).toMatch(/Rowan.*"18":false/);
    const again = await openPane({}, { kept: await texts(), demo: true });
    await openAll(again);
    expect(await again.getByLabel("Player", { exact: true }).inputValue()).toBe("Rowan");
    expect(await again.getByLabel(/Shot 17/).isChecked()).toBe(false);
  });

  test("shows how far a long write is and stops it when told to", async () => {
    const page = await openPane({}, { slow: 20_000 });
    await paste(page, DEMO_TEXT);
    await page.locator("#make-sheets").click();
    await page.locator("progress").waitFor();
    await page.locator("#cancel-making").click();
    await expect.poll(() => status(page).textContent(), { timeout: 5000 }).toMatch(/Stopped/);
    expect(await page.locator("progress").count()).toBe(0);
  });

  test("says why sheets were not written, and lets the button be pressed again", async () => {
    const page = await openPane({}, { refuses: "The workbook is protected." });
    await paste(page, DEMO_TEXT);
    await page.locator("#make-sheets").click();
    await expect.poll(() => status(page).textContent()).toBe("The workbook is protected.");
    expect(await page.locator("#make-sheets").isEnabled()).toBe(true);
  });

  test("writes figures as the place does, and in the units chosen", async () => {
    const page = await openPane({ locale: "de-DE" });
    await paste(page, "Build\tCarry (yd)\nA\t150\nA\t152");
    const carry = page.locator(".figures tr", { hasText: "Carry" });
    // A place that measures in metres begins with them: 151 yd x 0.9144 m = 138.07 m.
    await expect.poll(() => carry.textContent()).toMatch(/138,1/);
    await page.locator("#units").selectOption("us");
    await expect.poll(() => carry.textContent()).toMatch(/151,0/);
  });

  test("shows thousands of shots without listing every one", async () => {
    const page = await openPane();
    const shots = Array.from({ length: 6000 }, (_, i) => `${"AB"[i % 2]}\t${150 + (i % 7)}`);
    await page.locator("#shots-text").evaluate(
      (box, text) => {
        const clipboardData = new DataTransfer();
        clipboardData.setData("text/plain", text);
        box.dispatchEvent(new ClipboardEvent("paste", { clipboardData, bubbles: true, cancelable: true }));
      },
      `Build\tCarry\n${shots.join("\n")}`,
    );
    await openAll(page);
    expect(await page.locator("#shots .brief").textContent()).toMatch(/^6000 of 6000 counted/);
    expect(await page.locator("#shots input").count()).toBeLessThan(1000);
  });
});

test("says below the chances that they are rounded, where those shown do not make 100", async () => {
  const page = await openPane({}, { demo: true });
  const chances = page.locator("[aria-labelledby^=chances] desc");
  const caption = page.locator("figure", { has: chances }).locator("figcaption");
  const sum = async () => {
    const said = [...((await chances.textContent()) ?? "").matchAll(/(\d+) in 100/g)];
    return said.reduce((total, [, figure]) => total + Number(figure), 0);
  };
  await expect.poll(sum).toBe(101);
  expect(await caption.textContent()).toContain("Each is rounded");
  await page.locator("#goal").selectOption("window");
  await expect.poll(sum).toBe(100);
  expect(await caption.textContent()).not.toContain("rounded");
});

describe("what the flight model adds", { timeout: PATIENCE }, () => {
  test("tells carries in standard air once the air is stated, in the units of the place", async () => {
    const page = await openPane();
    await paste(page, DEMO_TEXT);
    await openAll(page);
    await page.locator(".carries").waitFor();
    const headings = page.locator(".carries thead th");
    expect(await headings.allTextContents()).toEqual(["Build", "As hit", "Strike evened out"]);
    await page.locator("#air summary").click();
    await page.getByLabel("Altitude, ft").fill("5280");
    await page.getByLabel("Altitude, ft").press("Tab");
    await expect
      .poll(() => headings.allTextContents())
      .toEqual(["Build", "As hit", "Strike evened out", "Standard air", "and one club speed"]);
    const [hit, , standard] = (
      await page.locator(".carries tbody tr").first().locator("td").allTextContents()
    ).map(Number) as [number, number, number];
    expect(standard).toBeLessThan(hit);
    await page.locator("#units").selectOption("metric");
    // A mile is 1,609.344 m (international yard and pound agreement, 1959); the box shows two decimals.
    expect(await page.getByLabel("Altitude, m").inputValue()).toBe("1609.34");
    expect(await page.locator("#air summary").textContent()).toBe("Air: as stated");
    expect(await axeFaults(page)).toEqual([]);
  });

  test("computes what a table lacks when told to, and marks it in the list, the figures and the words", async () => {
    const page = await openPane();
    await paste(page, DEMO_TEXT.replace("\t161.6\t", "\t\t"));
    await openAll(page);
    const first = page.locator("#shots .shot").first();
    expect(await first.textContent()).toContain("no carry");
    await page.getByLabel(/Compute what the table lacks/).check();
    await expect.poll(() => first.textContent()).toMatch(/16\d\.\d.yd \(computed\)/);
    expect(await page.getByText("(computed)").count()).toBe(1);
    await expect
      .poll(() => page.locator("#further").textContent())
      .toContain("Carry of 1 of 24 shots is computed");
    const row = page.locator(".figures tbody th", { hasText: /^Carry/ });
    expect(await row.textContent()).toContain("1 of 24 computed");
    await page.getByLabel(/Compute what the table lacks/).uncheck();
    await expect.poll(() => first.textContent()).toContain("no carry");
  });

  test("answers what another loft would do, and says what weight, greens and order do", async () => {
    const page = await openPane();
    await paste(page, DEMO_TEXT);
    const answer = page.locator("#loft-answer");
    await expect.poll(() => answer.textContent()).toMatch(/^95 g high-launch, 2 degrees weaker: .*carry/);
    await page.getByLabel("Build to bend").selectOption("105 g mid-launch");
    await page.getByLabel("Loft change").selectOption("-3");
    expect(await answer.textContent()).toMatch(
      /^105 g mid-launch, 3 degrees stronger: launch angle [\d.]+ degrees less/,
    );
    const words = await page.locator("#further").textContent();
    expect(words).toContain("What weight did");
    expect(words).toContain("not what weight alone does");
    expect(words).toMatch(/95 g high-launch has a shot far from the rest \(144 yd\)/);
    expect(words).toMatch(/Into a green95 g high-launch Comes down at \d\d\.\d degrees/);
  });

  test("warns of a drift with the order of the shots", async () => {
    const page = await openPane();
    // Carry rises by 2 yd from each shot to the next, whatever the build: 22 yd from the first to the last.
    const noise = [0, 0.4, -0.4, 0.2, -0.2, 0.1, -0.1, 0.3, -0.3, 0.2, -0.1, 0];
    const shots = noise.map((off, i) => `${"AB"[i % 2]}\t${(150 + 2 * i + off).toFixed(1)}`);
    await paste(page, `Build\tCarry (yd)\n${shots.join("\n")}`);
    await expect
      .poll(() => page.locator("#further").textContent())
      .toMatch(/Carry rose by about 22 yd from the first shot to the last/);
  });
});

const LOOKS: Record<string, PaneLook> = {
  "light at 320 pixels": {},
  "dark at 480 pixels": { dark: true, width: 480 },
  "forced colours": { forced: true },
};

describe("a reader of any kind", { timeout: PATIENCE }, () => {
  for (const [name, look] of Object.entries(LOOKS)) {
    test(`finds nothing in the way in ${name}, in every state`, async () => {
      const page = await openPane(look, { slow: 1500 });
      const fine = async (state: string) => {
        expect(await axeFaults(page), state).toEqual([]);
        const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
        expect(wide, `${state}: sideways scrolling`).toBeLessThanOrEqual(0);
      };
      await fine("empty");
      await openAll(page);
      await page.locator("#plan-builds").fill("A\nB\nC");
      await page.locator("#plan-words").waitFor();
      await fine("a test planned");
      await paste(page, "no table at all");
      await page.locator("#shots-problem").waitFor();
      await fine("not understood");
      await paste(page, DEMO_TEXT.replace("84.7", "fast"));
      await openAll(page);
      for (const fold of await page.locator(".card summary").all()) await fold.click();
      await page.locator("#set-text").waitFor();
      await page.locator("#loft-answer").waitFor();
      await page.getByLabel("Temperature, °F").fill("90");
      await page.getByLabel("Temperature, °F").press("Tab");
      await fine("everything open");
      await page.locator("#set-text").fill("club; length\n7i; long");
      await page.locator("#set-problem").waitFor();
      await fine("a set with a fault");
      await page.locator("#make-sheets").click();
      await page.locator("progress").waitFor();
      await fine("writing");
      await expect.poll(() => status(page).textContent(), { timeout: 5000 }).toMatch(/^Added/);
      await page.locator("#new-session").click();
      await page.locator("#session").waitFor();
      await fine("a second session");
      await page.close();
    });

    test(`finds nothing in the way in ${name}: the ledger, a table of the workbook, a long table, a failed write`, async () => {
      const page = await openPane(look, { demo: true, refuses: "The workbook is protected." });
      const fine = async (state: string) => expect(await axeFaults(page), state).toEqual([]);
      await page.locator("#ledger summary").click();
      await page.locator("#keep-in-ledger").waitFor();
      await fine("the ledger");
      await page.getByRole("button", { name: "Take a table of this workbook" }).click();
      await page.getByLabel("Table to take").waitFor();
      await fine("taking a table");
      await page.locator("#make-sheets").click();
      await expect.poll(() => status(page).textContent()).toBe("The workbook is protected.");
      await fine("a failed write");
      await pasteMany(page, 8000);
      // This page has no address to fetch the reader of long tables from.
      await page.locator("#long-table").getByRole("alert").waitFor();
      await fine("a long table that could not be read");
      await page.close();
    });
  }
});
