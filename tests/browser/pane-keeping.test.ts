import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { DEMO_TEXT } from "../../src/fitting/demo.ts";
import { aroundPane } from "./around-pane.ts";
import { axeFaults } from "./axe-faults.ts";
import { openAll } from "./pane-page.ts";

const PATIENCE = 60_000;

const openPane = aroundPane();

const texts = (page: Page) => page.evaluate(() => Object.fromEntries(globalThis.paneTest.host!.texts));
const box = (page: Page) => page.locator("#shots-text");
const SESSIONS = "bench-sessions";

describe("sessions in the pane", { timeout: PATIENCE }, () => {
  test("are not kept by opening the pane alone", async () => {
    const page = await openPane({}, { demo: true });
    await page.waitForTimeout(1000);
    expect(await texts(page)).toEqual({});
    await page.close();
  });

  test("of a later version stay as they are until they are put aside", async () => {
    const later = '{"version":2,"drafts":[]}';
    const page = await openPane({}, { demo: true, kept: { [SESSIONS]: later } });
    expect(await page.locator("#unread").textContent()).toContain("a later version of this pane wrote them");
    expect(await axeFaults(page)).toEqual([]);
    await box(page).fill(DEMO_TEXT);
    await page.waitForTimeout(800);
    expect(await texts(page)).toEqual({ [SESSIONS]: later });
    await page.locator("#put-aside").click();
    await expect.poll(async () => (await texts(page))[SESSIONS]).toContain("95 g high-launch");
    expect(await texts(page)).toMatchObject({ [`${SESSIONS}-aside`]: later });
    expect(await page.locator("#unread").count()).toBe(0);
    await page.close();
  });

  test("that the host does not hand out are not written over", async () => {
    const page = await openPane({}, { demo: true, recallRefuses: "The spreadsheet is busy." });
    expect(await page.locator("#unread").textContent()).toContain("The spreadsheet is busy.");
    expect(await page.locator("#put-aside").count()).toBe(0);
    await box(page).fill(DEMO_TEXT);
    await page.waitForTimeout(800);
    expect(await texts(page)).toEqual({});
    await page.close();
  });

  test("are kept where what was put right about columns is not, and that is told of", async () => {
    const page = await openPane(
      {},
      { keepRefuses: "The workbook is full.", keepRefusesKey: "bench-mappings" },
    );
    await box(page).fill("Build\tCarry\tRun\nA\t150\t10\nA\t152\t12");
    await openAll(page);
    await page.getByLabel("What Run holds").selectOption({ label: "Peak height" });
    await expect
      .poll(() => page.locator("#unkept").textContent())
      .toMatch(/columns could not be remembered .* The workbook is full\.$/);
    await expect.poll(async () => (await texts(page))[SESSIONS]).toContain('"height"');
    await page.close();
  });

  test("that cannot be kept are told of", async () => {
    const page = await openPane({}, { keepRefuses: "The workbook is full." });
    await box(page).fill(DEMO_TEXT);
    await expect.poll(() => page.locator("#unkept").textContent()).toContain("The workbook is full.");
    expect(await axeFaults(page)).toEqual([]);
    await page.close();
  });

  test("are kept at once when the page is hidden", async () => {
    const page = await openPane();
    await box(page).fill(DEMO_TEXT);
    await page.evaluate(() => dispatchEvent(new Event("pagehide")));
    expect(Object.keys(await texts(page))).toEqual([SESSIONS]);
    await page.close();
  });

  test("start over empty and come back with one press of Undo", async () => {
    const page = await openPane();
    await box(page).fill(DEMO_TEXT);
    await openAll(page);
    await page.getByLabel("Player", { exact: true }).fill("Rowan");
    await page.getByLabel("Player", { exact: true }).press("Tab");
    await page.getByLabel(/Shot 17/).uncheck();
    await page.locator("#start-over").click();
    expect(await box(page).inputValue()).toBe("");
    await page.locator("#undo").click();
    expect(await box(page).inputValue()).toBe(DEMO_TEXT);
    await openAll(page);
    expect(await page.getByLabel("Player", { exact: true }).inputValue()).toBe("Rowan");
    expect(await page.getByLabel(/Shot 17/).isChecked()).toBe(false);
    await page.close();
  });

  test("go back one pasted table at a time", async () => {
    const page = await openPane();
    await box(page).fill(DEMO_TEXT);
    await box(page).fill("Build\tCarry\nA\t150");
    await page.locator("#undo").click();
    expect(await box(page).inputValue()).toBe(DEMO_TEXT);
    await box(page).press("ControlOrMeta+End");
    await page.keyboard.type("\n95 g");
    expect(await box(page).inputValue()).toBe(`${DEMO_TEXT}\n95 g`);
    await page.locator("#undo").click();
    expect(await box(page).inputValue()).toBe(DEMO_TEXT);
    await page.close();
  });
});

describe("what is dropped on the pane", { timeout: PATIENCE }, () => {
  const drop = (page: Page, what: { text?: string; file?: string; name?: string }) =>
    page.locator("#bring .drop").evaluate((section, { text, file, name }) => {
      const dataTransfer = new DataTransfer();
      if (text !== undefined) dataTransfer.setData("text/plain", text);
      const bytes = Uint8Array.from(file ?? "", (letter) => letter.charCodeAt(0));
      if (file !== undefined) dataTransfer.items.add(new File([bytes], name ?? "shots.txt"));
      const event = { dataTransfer, bubbles: true, cancelable: true };
      section.dispatchEvent(new DragEvent("dragover", event));
      section.dispatchEvent(new DragEvent("drop", event));
    }, what);

  test("becomes the table: text, and a file in whatever encoding", async () => {
    const page = await openPane();
    await drop(page, { text: "Build\tCarry\nA\t150" });
    await expect.poll(() => page.locator("#reading .brief").textContent()).toBe("1 shot, 1 build");
    // Windows-1252, as programs of that system write it: ä is the byte E4.
    await drop(page, { file: "Build\tCarry\nSchl\xe4ger\t150\nB\t151" });
    await expect.poll(() => box(page).inputValue()).toContain("Schläger");
    await page.close();
  });

  test("without text changes nothing and is told of, and so is a workbook", async () => {
    const page = await openPane();
    await box(page).fill("Build\tCarry\nA\t150");
    await drop(page, {});
    await expect.poll(() => page.getByText("What was dropped holds no text").count()).toBe(1);
    await drop(page, { file: "PK\x03\x04", name: "shots.xlsx" });
    await expect.poll(() => page.getByText("This file is a workbook or an archive").count()).toBe(1);
    expect(await box(page).inputValue()).toBe("Build\tCarry\nA\t150");
    await page.close();
  });

  test("from within the box is the browser's to move, and replaces nothing", async () => {
    const page = await openPane();
    await box(page).fill("Build\tCarry\nA\t150");
    const left = await box(page).evaluate((area) => {
      const event = { dataTransfer: new DataTransfer(), bubbles: true, cancelable: true };
      event.dataTransfer.setData("text/plain", "Carry");
      area.dispatchEvent(new DragEvent("dragstart", event));
      return area.dispatchEvent(new DragEvent("drop", event));
    });
    expect(left).toBe(true);
    expect(await box(page).inputValue()).toBe("Build\tCarry\nA\t150");
    await page.close();
  });

  test("or opened as a file can be taken a second time", async () => {
    const page = await openPane();
    const file = { name: "shots.csv", mimeType: "text/csv", buffer: Buffer.from("Build,Carry\nA,150") };
    for (let time = 0; time < 2; time++) {
      await page.locator("#pane input[type=file]").setInputFiles(file);
      await expect.poll(() => box(page).inputValue()).toBe("Build,Carry\nA,150");
      expect(await page.locator("#pane input[type=file]").inputValue()).toBe("");
      await box(page).fill("");
    }
    await page.close();
  });
});

describe("what a build is made of", { timeout: PATIENCE }, () => {
  test("stays in its box while it is typed, though shots come in meanwhile", async () => {
    const page = await openPane();
    await box(page).fill(DEMO_TEXT);
    await openAll(page);
    await page.getByLabel("Player", { exact: true }).fill("Row");
    const shot = DEMO_TEXT.split("\n").at(-1)!;
    const comes = (text: string) =>
      page.locator("#more-shots").evaluate((line, more) => {
        const clipboardData = new DataTransfer();
        clipboardData.setData("text/plain", more);
        line.dispatchEvent(new ClipboardEvent("paste", { clipboardData, bubbles: true, cancelable: true }));
      }, text);
    await comes(shot);
    await page.locator("#shots .brief", { hasText: "25 of 25" }).waitFor();
    expect(await page.getByLabel("Player", { exact: true }).inputValue()).toBe("Row");
    const weight = page.locator("#builds .card").nth(1).getByLabel("Shaft weight, g");
    await page.locator("#builds .card summary").nth(1).click();
    await weight.fill("9");
    await comes(shot);
    await page.locator("#shots .brief", { hasText: "26 of 26" }).waitFor();
    expect(await weight.inputValue()).toBe("9");
    await page.close();
  });

  test("is entered, refused with bounds that would do, taken out again and stays so", async () => {
    const page = await openPane();
    await box(page).fill(DEMO_TEXT);
    await openAll(page);
    const card = page.locator("#builds .card").nth(1);
    await card.locator("summary").click();
    const enter = async (label: string, text: string) => {
      await card.getByLabel(label).fill(text);
      await card.getByLabel(label).press("Tab");
    };
    await page.locator("#units").selectOption("metric");
    await enter("Length, cm", "71");
    expect(await card.getByRole("alert").textContent()).toBe("71.2 to 127 would do.");
    await enter("Length, cm", "94");
    await enter("Flex", "stiff");
    await enter("Head", "bay 7i");
    await enter("Swingweight", "D2");
    await enter("Shaft weight, g", "");
    expect(await card.locator("summary").textContent()).toBe("94 cm, stiff, high, bay 7i, D2");
    await enter("Name", "Blue");
    await expect.poll(() => card.locator("label.choice").textContent()).toContain("Blue");
    await expect.poll(async () => (await texts(page))[SESSIONS]).toContain('"Blue"');
    const again = await openPane({}, { kept: await texts(page) });
    await openAll(again);
    const [first] = await again
      .locator("#builds .card summary")
      .filter({ hasText: "stiff" })
      .allTextContents();
    expect(first).toBe("94 cm, stiff, high, bay 7i, D2");
    await page.close();
    await again.close();
  });

  test("goes to the bench with a name given later, and its own set file with it", async () => {
    const page = await openPane();
    await box(page).fill(DEMO_TEXT);
    await openAll(page);
    await page.locator("#set-text").waitFor();
    await page.locator("#bench-build").selectOption("95 g high-launch");
    const card = page.locator("#builds .card").filter({ hasText: "95 g high-launch" }).first();
    await card.locator("summary").click();
    await card.getByLabel("Name").fill("Blue");
    await card.getByLabel("Name").press("Tab");
    await expect.poll(() => page.locator("#bench-build").inputValue()).toBe("Blue");
    await page.close();
  });
});

describe("the keyboard's place", { timeout: PATIENCE }, () => {
  const focused = (page: Page) => page.evaluate(() => document.activeElement?.id ?? "");

  test("stays where a press takes the reason for the button away, or goes where one would look next", async () => {
    const page = await openPane();
    await box(page).fill("Build\tCarry\tLaunch\tSpin\tClub\nA\t150\t16\t6000\t7 iron");
    await page.locator("#more-shots").fill("B\t160\t16\t6000\t7 iron");
    await page.locator("#add-shots").press("Enter");
    expect(await focused(page)).toBe("add-shots");
    await page.locator("#undo").focus();
    for (let times = 0; times < 3; times++) await page.keyboard.press("Enter");
    expect(await focused(page)).toBe("undo");
    await page.locator("#new-session").press("Enter");
    await page.locator("#forget").press("Enter");
    expect(await focused(page)).toBe("new-session");
    await page.close();
  });

  test("goes to what a button was about that is no longer there", async () => {
    const page = await openPane();
    await box(page).fill(DEMO_TEXT);
    await openAll(page);
    await page.locator("#set-text").waitFor();
    await page.locator("#set-text").fill("grip; 50");
    await page.locator("#usual-set").press("Enter");
    expect(await focused(page)).toBe("set-text");
    const limit = page.locator("#windows input").first();
    const usual = await limit.inputValue();
    await limit.fill("14.5");
    await limit.press("Tab");
    await page.locator("#usual-windows").press("Enter");
    await expect.poll(() => limit.inputValue()).toBe(usual);
    expect(await limit.evaluate((one) => one === document.activeElement)).toBe(true);
    await page.close();
  });

  test("comes back to the button that wrote when the one that stops goes", async () => {
    const page = await openPane({}, { slow: 20_000 });
    await box(page).fill(DEMO_TEXT);
    await page.locator("#make-sheets").press("Enter");
    await page.locator("#cancel-making").press("Enter");
    await expect.poll(() => page.locator("#cancel-making").count(), { timeout: 10_000 }).toBe(0);
    expect(await focused(page)).toBe("make-sheets");
    await page.close();
  });
});

describe("what the pane says", { timeout: PATIENCE }, () => {
  test("has a doubt tied to its tick, and no word of a verdict before there is one", async () => {
    const page = await openPane();
    await box(page).fill(DEMO_TEXT);
    await openAll(page);
    const tied = await page.getByLabel(/Shot 17/).getAttribute("aria-describedby");
    expect(await page.locator(`#${tied}`).textContent()).toMatch(/^Far below the rest in /);
    await expect
      .poll(() => page.locator(".heard[aria-live]").textContent())
      .toMatch(/Verdict: leaning: 105 g/);
    expect(await page.locator(".heard[aria-live]").textContent()).not.toContain("Verdict: .");
    await page.close();
  });

  test("names rows that were left out, all of them when asked, and each problem once", async () => {
    const page = await openPane();
    const shots = Array.from({ length: 60 }, (_, i) => `A\t${150 + (i % 5)}\nAverage\t152`);
    await box(page).fill(`Build\tCarry (yd)\nA\tfar\n${shots.join("\n")}`);
    await openAll(page);
    const reading = page.locator("#reading");
    // The headings, the row without a carry and sixty averages.
    expect(await reading.getByText("Rows left out: 62").count()).toBe(1);
    expect(await reading.locator("#skipped li").count()).toBe(50);
    await reading.getByRole("button", { name: "Show 12 more" }).click();
    expect(await reading.locator("#skipped li").count()).toBe(62);
    const problem = await reading.locator(".problems li").first().textContent();
    expect(problem).toMatch(/^Row 2, column 2 \(Carry \(yd\)\): found "far"/);
    expect(problem!.match(/Row 2/g)).toHaveLength(1);
    expect(problem!.match(/far/g)).toHaveLength(1);
    await page.close();
  });

  test("is a refusal where tables cannot be looked for, with a way to look again", async () => {
    const page = await openPane({}, { tablesRefuse: "The spreadsheet is busy." });
    await page.getByRole("button", { name: "Take a table of this workbook" }).click();
    await page.getByText("The spreadsheet is busy.").waitFor();
    expect(await page.getByText("Looking for tables").count()).toBe(0);
    await page.locator("#look-again").click();
    await page.getByLabel("Table to take").waitFor();
    expect(await page.getByText("The spreadsheet is busy.").count()).toBe(0);
    await page.close();
  });

  test("is what holds again where a limit that is needed was emptied", async () => {
    const page = await openPane();
    await openAll(page);
    await page.getByLabel("Shots each").fill("");
    await page.getByLabel("Shots each").press("Tab");
    expect(await page.getByLabel("Shots each").inputValue()).toBe("6");
    await page.close();
  });

  test("fits its boxes on a narrow screen, also with two sessions and long names", async () => {
    const page = await openPane({ width: 320 }, { demo: true });
    await page.locator("#new-session").click();
    await page.locator("#use-demo").click();
    await openAll(page);
    for (const fold of await page.locator(".card summary").all()) await fold.click();
    const cut = await page
      .locator("input:not([type=file])")
      .evaluateAll((boxes) =>
        boxes
          .filter((one) => one.scrollWidth > one.clientWidth)
          .map((one) => (one as HTMLInputElement).value),
      );
    expect(cut).toEqual([]);
    const [session, remove] = await Promise.all(
      ["#session", "#forget"].map((one) => page.locator(one).boundingBox()),
    );
    expect(session!.width).toBeGreaterThan(260);
    expect(remove!.y).toBeGreaterThan(session!.y);
    await page.close();
  });
});
