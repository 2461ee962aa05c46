import { beforeEach } from "vitest";
import { TOO_SLOW } from "./too-slow.ts";

beforeEach(({ task, skip }) => {
  if (TOO_SLOW.some((part) => task.name.includes(part))) skip();
});
