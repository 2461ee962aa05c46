/** What the ribbon and the context menu ask of the pane. */
export interface Commands {
  /** Takes the selected cells as shots and shows the comparison of their builds. */
  readonly compareSelection: () => Promise<void> | void;
  /** Goes to the bench sheet of the build that was chosen. */
  readonly fillBenchSheet: () => Promise<void> | void;
}

/** Names by which manifest.xml calls the commands. */
export const COMMAND_NAMES = ["openPane", "compareSelection", "fillBenchSheet"] as const;

/**
 * Ties the commands of the manifest to what the pane does. The pane and the commands share one runtime, so a
 * command shows the pane first and then speaks to it directly; where it fails, the pane is where that is said.
 */
export function associateCommands(commands: Commands): void {
  const tie = (name: (typeof COMMAND_NAMES)[number], run: () => Promise<void> | void) =>
    Office.actions.associate(name, async (event?: Office.AddinCommands.Event) => {
      try {
        await Office.addin.showAsTaskpane();
        await run();
      } finally {
        // The ribbon waits for this; without it the button stays grey.
        event?.completed();
      }
    });
  tie("openPane", () => {});
  tie("compareSelection", commands.compareSelection);
  tie("fillBenchSheet", commands.fillBenchSheet);
}
