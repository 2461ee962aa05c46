/** Every function of ours begins with this in a workbook, as manifest.xml says. */
export const NAMESPACE = "CLUB";
