/** What the ledger takes, gathered so that it loads when its section is opened. */

export { keepWords } from "../ledger/keep-plan.ts";
export { lookBack } from "../ledger/look-back.ts";
export { shopFindings } from "../ledger/shop-findings.ts";
export { shopWorkbook } from "../ledger/shop-sheet.ts";
export { bringInTracking } from "./ledger-bring-in.ts";
export { forgetPlayer, keepRows, keepSession, ledgerOf } from "./ledger-keeping.ts";
