/** What the ledger takes, gathered so that it loads when its section is opened. */

export { keepWords } from "../ledger/keep-plan.ts";
export { lookBack } from "../ledger/look-back.ts";
export { shopFindings } from "../ledger/shop-findings.ts";
export { shopWorkbook } from "../ledger/shop-sheet.ts";
export { inSlices } from "../slices/in-slices.ts";
export { bringInSelected, bringInText } from "./ledger-bring-in.ts";
export { exportLedger, exportWords } from "./ledger-export.ts";
export { forgottenWords } from "./ledger-forgotten-words.ts";
export { forgetPlayer, keepRows, keepSession, ledgerOf } from "./ledger-keeping.ts";
export { unkeptWords } from "./ledger-unkept.ts";
export { STOPPED, unlessStopped } from "./unless-stopped.ts";
