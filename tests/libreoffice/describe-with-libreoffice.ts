import { afterAll, describe, expect, test } from "vitest";
import { tidyUp } from "./convert.ts";
import { findLibreOffice } from "./find-libreoffice.ts";

/**
 * Tests that need LibreOffice. Where it is not installed they are skipped, and the report says so; a build server
 * must have it, so there its absence is a failure.
 */
export function describeWithLibreOffice(title: string, tests: () => void): void {
  if (findLibreOffice() !== null) {
    describe(title, () => {
      afterAll(tidyUp);
      tests();
    });
  } else if (process.env.CI) {
    test(title, () => expect.fail("LibreOffice is not installed, but a build server must run these tests."));
  } else describe.skip(`${title} (skipped: LibreOffice is not installed)`, tests);
}
