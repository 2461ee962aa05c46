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

/**
 * All that is fetched only when it is asked for. Once the pane has nothing else to do it asks for all of it, so that the
 * network may go afterwards; what does not come now is asked for again, and told of, when it is needed.
 */
export async function fetchTheRest(): Promise<void> {
  await Promise.allSettled([
    fetchFilling(),
    fetchTables(),
    fetchLongTable(),
    fetchWorkshop(),
    import("./further-words.tsx"),
    import("./air-fields.tsx"),
    import("./ledger-view.tsx"),
    import("./ledger-desk.ts"),
    import("../sheets/comparison-workbook.ts"),
    import("./run-long.ts").then(({ fetchScript }) => fetchScript()),
  ]);
}
