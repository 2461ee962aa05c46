import { render } from "preact";
import { associateCommands } from "../hosts/excel/commands.ts";
import { excelHost } from "../hosts/excel/excel-host.ts";
import { mountPane } from "./mount.tsx";
import { whenIdle } from "./when-idle.ts";

/** The pane inside the spreadsheet: the one file here that knows which host it stands in. */
if (typeof Office === "undefined") sayNoLibrary();
else void Office.onReady(start);

/** Without the platform's script nothing of the workbook can be reached, so nothing is shown that would not work. */
function sayNoLibrary(): void {
  const words = document.createElement("p");
  words.role = "alert";
  words.textContent =
    "The spreadsheet's own script (office.js) could not be fetched, and without it the pane cannot reach the workbook. Look at the connection and try again.";
  const again = document.createElement("button");
  again.type = "button";
  again.textContent = "Try again";
  again.addEventListener("click", () => location.reload());
  document.getElementById("pane")!.replaceChildren(words, again);
}

function start(): void {
  const element = document.getElementById("pane")!;
  const said = document.getElementById("said")!;
  const host = excelHost();
  const open = () => {
    render(null, element);
    element.textContent = "";
    mountPane(element, host);
  };
  // What the buttons do is fetched when one is pressed.
  const commands = async () =>
    (await import("./pane-commands.ts")).paneCommands({
      host,
      reopen: open,
      say(sentence) {
        said.textContent = sentence;
      },
      settled: () => new Promise((resolve) => setTimeout(resolve, KEPT_AFTER)),
    });
  // The buttons first: the ribbon may call while the pane is still being set up.
  associateCommands({
    compareSelection: async () => (await commands()).compareSelection(),
    fillBenchSheet: async () => (await commands()).fillBenchSheet(),
  });
  const { officeTheme } = Office.context;
  if (officeTheme) {
    const theme = isDark(officeTheme.bodyBackgroundColor) ? "dark" : "light";
    for (const part of [element, said]) part.dataset.theme = theme;
  }
  open();
  whenIdle(() => void Promise.allSettled([writing(), tables(), import("./pane-commands.ts")]));
}

/** What the host fetches only when it is needed: asked for once the pane is idle, for the network may go. */
const writing = () => import("../hosts/excel/writing.ts");
const tables = () => import("../hosts/excel/tables.ts");

/** The pane waits 400 ms for the next change before it keeps what there is; a little more, and all of it is kept. */
const KEPT_AFTER = 600;

/** Whether a `#rrggbb` colour is nearer to black than to white. */
function isDark(color: string): boolean {
  const parts = color.match(/[0-9a-f]{2}/gi)?.map((part) => Number.parseInt(part, 16)) ?? [255];
  return parts.reduce((sum, part) => sum + part, 0) / parts.length < 128;
}
