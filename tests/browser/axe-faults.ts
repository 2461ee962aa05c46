import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Page } from "playwright-core";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/** What axe-core finds wrong on a page, in a part of it or in all but some parts, a line each. */
export async function axeFaults(
  page: Page,
  where: string | { readonly exclude: readonly string[] } = "html",
): Promise<string[]> {
  // By the browser's own tools, for a page with a policy lets no script in by any other way.
  await page.evaluate(AXE);
  const found = await page.evaluate(`axe.run(${JSON.stringify(where)})`);
  const { violations } = found as { violations: { id: string; nodes: { html: string }[] }[] };
  return violations.map(
    ({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 100)).join(" | ")}`,
  );
}
