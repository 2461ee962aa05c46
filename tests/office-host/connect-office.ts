import type { ServiceAnswer, WireEvent } from "./service.ts";
import type { WireRequest } from "./wire-format.ts";

/**
 * Lets the loaded client library talk to `send` instead of a spreadsheet. `version` is the newest set of ExcelApi
 * that this spreadsheet knows. It reaches for nothing but globals, so that it can travel into a page as text.
 */
export function connectOffice(
  send: (request: WireRequest) => ServiceAnswer | Promise<ServiceAnswer>,
  version: string,
  hearFlags: (flags: number) => void = () => {},
): void {
  const isSetSupported = (name: string, least = "1.1") =>
    name === "ExcelApi"
      ? Number(least.split(".")[1]) <= Number(version.split(".")[1])
      : name === "SharedRuntime" || name === "DelayForCellEdit";
  const onReady = async (then?: (info: unknown) => void) => {
    const info = { host: "Excel", platform: "OfficeOnline" };
    then?.(info);
    return info;
  };
  // The library's own context cannot be replaced, only stood in front of.
  globalThis.Office = Object.create(Office, {
    context: { value: { requirements: { isSetSupported } } },
    onReady: { value: onReady },
    // The pane is open already; the library would ask the spreadsheet around it.
    addin: {
      value: {
        showAsTaskpane: async () => {},
        // The tests close the pane by what is kept here.
        onVisibilityModeChanged: async (hear: (message: { visibilityMode: string }) => void) => {
          globalThis.onPaneVisibility = hear;
          return async () => {
            globalThis.onPaneVisibility = undefined;
          };
        },
      },
    },
  }) as typeof Office;
  const internals = OfficeExtension as unknown as Internals;
  internals._testSetRichApiMessageReadyImpl(() => Promise.resolve());
  internals.CommonUtility._doApiNotSupportedCheck = true;
  internals.Utility._doApiNotSupportedCheck = true;
  internals.SessionBase._overrideSession = {
    _resolveRequestUrlAndHeaderInfo: async () => ({ url: "", headers: {} }),
    _createRequestExecutorOrNull: () => ({
      executeAsync: async (_custom, flags, message) => {
        hearFlags(flags);
        return send(message.Body);
      },
    }),
  };
}

/** Hands events to the loaded client library, as the spreadsheet around the page does. */
export function tellEvents(entries: readonly WireEvent[]): void {
  (OfficeExtension as unknown as Internals)._testTriggerRichApiMessageEvent({ entries });
}

declare global {
  var onPaneVisibility: ((message: { visibilityMode: string }) => void) | undefined;
}

interface Internals {
  _testSetRichApiMessageReadyImpl(ready: () => Promise<void>): void;
  _testTriggerRichApiMessageEvent(message: { entries: readonly WireEvent[] }): void;
  CommonUtility: { _doApiNotSupportedCheck: boolean };
  Utility: { _doApiNotSupportedCheck: boolean };
  SessionBase: {
    _overrideSession: {
      _resolveRequestUrlAndHeaderInfo(): Promise<unknown>;
      _createRequestExecutorOrNull(): {
        executeAsync(custom: string, flags: number, message: { Body: WireRequest }): Promise<ServiceAnswer>;
      };
    };
  };
}
