/** Chart figures stand beside the workings, to the right. */
export const FIRST_CHART_COLUMN = 16;

/** Row of the first figure; its heading stands above. */
export const FIRST_CHART_ROW = 2;
