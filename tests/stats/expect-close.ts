import { expect } from "vitest";

/** Fails unless the figure agrees with the published one to a relative difference, 1e-12 unless told otherwise. */
export function expectClose(found: number | null | undefined, published: number, relative = 1e-12): void {
  expect(found).toBeTypeOf("number");
  expect(Math.abs(found! - published), `${found} against ${published}`).toBeLessThanOrEqual(
    relative * Math.abs(published),
  );
}
