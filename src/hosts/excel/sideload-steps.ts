/** What makes a desktop spreadsheet, or its user, take an add-in that no store has. */
export interface Sideloading {
  /** A place for a copy of the manifest. */
  readonly copyTo?: string;
  /** A command and its arguments. */
  readonly run?: readonly string[];
  /** What the user does then. */
  readonly next: string;
}

/**
 * How an add-in under development gets into the spreadsheet: a folder on a Mac, an entry in the registry on
 * Windows, an upload on the web everywhere else. Places as the platform's documentation of sideloading gives them;
 * the registry key is from memory.
 */
export function sideloadSteps(platform: string, home: string, manifest: string, id: string): Sideloading {
  const restart = "Start the spreadsheet anew; Bay & Bench is on the Home tab, or under Add-ins.";
  if (platform === "darwin") {
    const folder = `${home}/Library/Containers/com.microsoft.Excel/Data/Documents/wef`;
    return { copyTo: `${folder}/${id}.manifest.xml`, next: restart };
  }
  if (platform === "win32") {
    const key = "HKCU\\Software\\Microsoft\\Office\\16.0\\WEF\\Developer";
    return { run: ["reg", "add", key, "/v", id, "/t", "REG_SZ", "/d", manifest, "/f"], next: restart };
  }
  return {
    next: `Open a workbook on the web, choose Home, Add-ins, More add-ins, My add-ins, Upload my add-in, and take ${manifest}.`,
  };
}
