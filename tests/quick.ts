/**
 * Whether only what answers in moments is asked for (`npm run test:unit`). The few cases that take seconds, for they
 * draw by the million or read by the thousand, say `skipIf(QUICK)`; `npm test` runs every one of them.
 */
export const QUICK = process.env.MODE === "quick";
