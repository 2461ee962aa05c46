import { answerRequest, type Session } from "./answer-request.ts";
import { loadOffice } from "./load-office.ts";
import { addNewerMembers } from "./newer-members.ts";
import { ServiceError } from "./service-error.ts";
import type { WireRequest } from "./wire-format.ts";
import { type HeldWorkbook, newWorkbook } from "./workbook.ts";

/** The service takes no larger request, and gives no larger answer, on the web. */
export const MOST_BYTES = 5 * 1024 * 1024;

export interface SentRequest {
  readonly bytes: number;
  readonly actions: number;
  readonly body: WireRequest;
}

/** Something that goes wrong, once or for good. */
export interface Fault {
  /** Counted from 0. */
  readonly request: number;
  /** Fails at this action, with those before it done; -1 loses the request, "answer" loses the answer to it. */
  readonly action: number | "answer";
  readonly code?: string;
  /** All requests from there on fail too. */
  readonly lasting?: boolean;
}

export interface OfficeHost {
  readonly workbook: HeldWorkbook;
  readonly requests: SentRequest[];
  fault?: Fault;
  /** Runs before a request is carried out: someone else working in the workbook, or a cancel. */
  before?: (request: number) => void;
}

/**
 * Stands in for the spreadsheet: from here on whatever the true client library sends is answered from a workbook
 * in memory. `version` is the newest set of ExcelApi that this spreadsheet knows.
 */
export function officeHost(version = "1.20", workbook = newWorkbook()): OfficeHost {
  loadOffice();
  addNewerMembers();
  const host: OfficeHost = { workbook, requests: [] };
  const session: Session = { workbook, references: new Map() };
  const supported = (name: string, least = "1.1") =>
    name === "ExcelApi"
      ? Number(least.split(".")[1]) <= Number(version.split(".")[1])
      : name === "SharedRuntime";
  // The library's own context cannot be replaced, only stood in front of.
  const context = { value: { requirements: { isSetSupported: supported } } };
  globalThis.Office = Object.create(Office, { context }) as typeof Office;
  const internals = OfficeExtension as unknown as Internals;
  internals.CommonUtility._doApiNotSupportedCheck = true;
  internals.Utility._doApiNotSupportedCheck = true;
  internals.SessionBase._overrideSession = {
    _resolveRequestUrlAndHeaderInfo: async () => ({ url: "", headers: {} }),
    _createRequestExecutorOrNull: () => ({
      executeAsync: async (_custom, _flags, message) => answer(host, session, message.Body),
    }),
  };
  return host;
}

function answer(host: OfficeHost, session: Session, given: WireRequest) {
  // Through text and back, as it would travel.
  const sent = JSON.stringify(given);
  const body = JSON.parse(sent) as WireRequest;
  const number = host.requests.length;
  host.requests.push({ bytes: Buffer.byteLength(sent), actions: body.Actions.length, body });
  host.before?.(number);
  if (Buffer.byteLength(sent) > MOST_BYTES) return failed("RequestPayloadSizeLimitExceeded");
  const { fault } = host;
  const hit = fault && (fault.request === number || (fault.lasting && number > fault.request));
  const code = fault?.code ?? "GeneralException";
  if (hit && (fault.action === -1 || number > fault.request)) return failed(code);
  const answered = answerRequest(session, body, (index) => {
    if (hit && index === fault.action) throw new ServiceError(code, "There was an internal error.");
  });
  if (hit && fault.action === "answer") return failed(code);
  const text = JSON.stringify(answered);
  if (Buffer.byteLength(text) > MOST_BYTES) return failed("ResponsePayloadSizeLimitExceeded");
  return { HttpStatusCode: 200, ErrorCode: null, ErrorMessage: null, Headers: {}, Body: JSON.parse(text) };
}

const failed = (code: string) => ({
  HttpStatusCode: 400,
  ErrorCode: code,
  ErrorMessage: `The request failed: ${code}.`,
  Headers: {},
  Body: null,
});

interface Internals {
  CommonUtility: { _doApiNotSupportedCheck: boolean };
  Utility: { _doApiNotSupportedCheck: boolean };
  SessionBase: {
    _overrideSession: {
      _resolveRequestUrlAndHeaderInfo(): Promise<unknown>;
      _createRequestExecutorOrNull(): {
        executeAsync(custom: string, flags: number, message: { Body: WireRequest }): Promise<unknown>;
      };
    };
  };
}
