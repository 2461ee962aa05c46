import { COMMAND_NAMES } from "./commands.ts";

/**
 * Keys of the commands. Ctrl+Alt+Shift, as neither the spreadsheet nor a browser has anything on these letters; on
 * Macs Cmd+Option+Shift. Where another add-in has, the spreadsheet asks the user which is meant. On Windows Ctrl+Alt
 * is AltGr, so the letters are such as type nothing with it on the keyboards of Europe and the Americas: B, G and H.
 */
const KEYS: Readonly<Record<(typeof COMMAND_NAMES)[number], { key: string; name: string }>> = {
  openPane: { key: "B", name: "Open the fitting pane" },
  compareSelection: { key: "G", name: "Compare the selection" },
  fillBenchSheet: { key: "H", name: "Fill a bench sheet" },
};

/** The file in which a spreadsheet looks for an add-in's keys. */
export function shortcutsFile() {
  return {
    actions: COMMAND_NAMES.map((id) => ({ id, type: "ExecuteFunction", name: KEYS[id].name })),
    shortcuts: COMMAND_NAMES.map((action) => ({
      action,
      key: {
        default: `Ctrl+Alt+Shift+${KEYS[action].key}`,
        mac: `Cmd+Option+Shift+${KEYS[action].key}`,
      },
    })),
  };
}

/**
 * The manifest with the line that tells the spreadsheet of the keys. The platform's documentation asks for this
 * element, its published schema file does not know it: so there are two manifests, one without keys that keeps to
 * the schema and one with.
 */
export function withShortcuts(manifest: string, address: string): string {
  const line = `<ExtendedOverrides Url="${address.replace(/\/+$/, "")}/shortcuts.json"/>`;
  return manifest.replace(/\s*<\/OfficeApp>\s*$/, `\n  ${line}\n</OfficeApp>\n`);
}
