import type { Service } from "./service.ts";

/** Everything the service keeps, less the counter that hands out identifiers. */
export const stateOf = ({ workbook }: Pick<Service, "workbook">) => ({
  ...structuredClone(workbook),
  last: 0,
});
