import type { Page } from "playwright-core";
import { DEMO_TEXT } from "../../src/fitting/demo.ts";

/** More stops than the pane has. */
const MOST_STOPS = 150;

/**
 * From an empty pane to the button that writes the sheets, by keyboard alone: pastes the demo table, takes the tick off
 * shot 17, calls the second build "Blue" and presses the button.
 */
export async function walkByKeyboard(page: Page, pane: string): Promise<void> {
  const { keyboard } = page;
  await page.locator(pane).evaluate((element) => {
    element.setAttribute("tabindex", "-1");
    (element as HTMLElement).focus();
  });
  await goTo(page, "#shots-text");
  await keyboard.press("ControlOrMeta+A");
  await keyboard.insertText(DEMO_TEXT);
  await page.locator("#findings").waitFor();
  await page.locator("#hit-next").waitFor();
  await goTo(page, "#builds > summary");
  await keyboard.press("Enter");
  await goTo(page, "#builds fieldset .card:nth-of-type(2) summary");
  await keyboard.press("Enter");
  await keyboard.press("Tab");
  await keyboard.press("ControlOrMeta+A");
  await keyboard.type("Blue");
  await keyboard.press("Tab");
  await page.locator("#builds .card b", { hasText: "Blue" }).waitFor();
  await goTo(page, "#shots > summary");
  await keyboard.press("Enter");
  await goTo(page, "#shots input[aria-describedby=doubt-18]");
  await keyboard.press("Space");
  await page.locator("#shots .brief", { hasText: "23 of 24 counted" }).waitFor();
  await goTo(page, "#make-sheets");
  await keyboard.press("Enter");
}

/** Presses Tab until the first element that a selector finds has the keyboard. */
async function goTo(page: Page, selector: string): Promise<void> {
  await page.locator(selector).first().waitFor();
  for (let stops = 0; stops < MOST_STOPS; stops++) {
    const there = await page.evaluate(
      (one) => document.querySelector(one) === document.activeElement,
      selector,
    );
    if (there) return;
    await page.keyboard.press("Tab");
  }
  throw new Error(`The keyboard does not get to ${selector}.`);
}
