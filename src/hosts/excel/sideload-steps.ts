/** What makes a desktop spreadsheet, or its user, take an add-in that no store has. */
export interface Sideloading {
  /** A place for a copy of the manifest. */
  readonly copy?: string;
  /** Commands with their arguments: to make the add-in known, and to make it unknown again. */
  readonly add?: readonly string[];
  readonly remove?: readonly string[];
  /** What the user does then. */
  readonly next: string;
}

const KEY = "HKCU\\Software\\Microsoft\\Office\\16.0\\WEF\\Developer";

/**
 * How an add-in under development gets into the spreadsheet: a folder on a Mac, an entry in the registry on
 * Windows, an upload on the web everywhere else. The folder is the one that the platform's documentation of
 * sideloading gives; the registry key is from memory.
 */
export function sideloadSteps(platform: string, home: string, manifest: string, id: string): Sideloading {
  if (platform === "darwin") {
    const folder = `${home}/Library/Containers/com.microsoft.Excel/Data/Documents/wef`;
    const next = "Start the spreadsheet anew and choose Bay & Bench under Insert, My Add-ins.";
    return { copy: `${folder}/${id}.manifest.xml`, next };
  }
  if (platform === "win32") {
    return {
      add: ["reg", "add", KEY, "/v", id, "/t", "REG_SZ", "/d", manifest, "/f"],
      remove: ["reg", "delete", KEY, "/v", id, "/f"],
      next: "Start the spreadsheet anew and choose Bay & Bench under Home, Add-ins, Developer Add-ins.",
    };
  }
  return {
    next: `Open a workbook on the web, choose Home, Add-ins, More add-ins, My add-ins, Upload my add-in, and take ${manifest}.`,
  };
}
