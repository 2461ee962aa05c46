/** Statistics and pictures. */
export const fetchAnalysis = () => import("./analysis.ts");

/** What asks about shots. */
export const fetchSessionParts = () => import("./session-parts.ts");

/** What computes figures that a table lacks. */
export const fetchFilling = () => import("../fitting/filled-session.ts");

/** What takes and follows a table of the workbook. */
export const fetchTables = () => import("./tables.ts");

/** What reads a table that is too long for the desk. */
export const fetchLongTable = () => import("./long-table.tsx");

/** The plan of a test and the bench. */
export const fetchWorkshop = () => import("./workshop.ts");
