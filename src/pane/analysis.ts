/**
 * What takes statistics and drawing, gathered so that it loads after the pane is on the screen: until shots have
 * been pasted nobody needs it, and in the spreadsheet the custom functions wait behind the same script.
 */

export { localWords } from "../sheets/local-words.ts";
export { chosenBuild } from "./chosen-build.ts";
export { FiguresTable } from "./figures-table.tsx";
export { Findings } from "./findings.tsx";
export { verdictBrief } from "./verdict-brief.ts";
