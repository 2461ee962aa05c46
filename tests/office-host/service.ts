import { areaName } from "../../src/sheets/a1.ts";
import { answerRequest, type Session } from "./answer-request.ts";
import { ServiceError } from "./service-error.ts";
import type { WireRequest } from "./wire-format.ts";
import { type HeldChange, type HeldWorkbook, newWorkbook } from "./workbook.ts";

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
  /** All requests from there on are lost. */
  readonly lasting?: boolean;
}

/** The service that a client library talks to: a workbook in memory, what was asked of it, and what goes wrong. */
export interface Service {
  readonly workbook: HeldWorkbook;
  readonly requests: SentRequest[];
  /** Bytes of each answer. */
  readonly received: number[];
  fault?: Fault;
  /** Runs before a request is carried out: someone else working in the workbook, or a cancel. */
  before?: (request: number) => void;
  answer(request: WireRequest): ServiceAnswer;
  /** Takes what is to be told of changes to the client library, some time after the answer, as the service does. */
  tell?: (events: readonly WireEvent[]) => void;
}

/** One event as it travels to the client library. */
export interface WireEvent {
  readonly messageCategory: number;
  readonly messageType: number;
  readonly targetId: string;
  readonly message: string;
}

/** Numbers by which the client library knows events, and the change of a sheet among them. */
const EVENTS = 65_536;
const SHEET_CHANGED = 10;

export interface ServiceAnswer {
  readonly HttpStatusCode: number;
  readonly ErrorCode: string | null;
  readonly ErrorMessage: string | null;
  readonly Headers: Record<string, string>;
  readonly Body: unknown;
}

export function newService(workbook = newWorkbook()): Service {
  const session: Session = { workbook, references: new Map() };
  const service: Service = {
    workbook,
    requests: [],
    received: [],
    answer: (request) => answer(service, session, request),
  };
  return service;
}

function answer(service: Service, session: Session, given: WireRequest): ServiceAnswer {
  // Through text and back, as it would travel.
  const sent = JSON.stringify(given);
  const body = JSON.parse(sent) as WireRequest;
  const number = service.requests.length;
  service.requests.push({ bytes: Buffer.byteLength(sent), actions: body.Actions.length, body });
  service.before?.(number);
  if (Buffer.byteLength(sent) > MOST_BYTES) return failed("RequestPayloadSizeLimitExceeded");
  const { fault } = service;
  const hit = fault && (fault.request === number || (fault.lasting && number > fault.request));
  const code = fault?.code ?? "GeneralException";
  if (hit && (fault.action === -1 || number > fault.request)) return failed(code);
  const answered = answerRequest(session, body, (index) => {
    if (hit && index === fault.action) throw new ServiceError(code, "There was an internal error.");
  });
  const events = session.workbook.changes.splice(0).map(eventOf);
  if (events.length > 0) setTimeout(() => service.tell?.(events));
  if (hit && fault.action === "answer") return failed(code);
  const text = JSON.stringify(answered);
  service.received.push(Buffer.byteLength(text));
  if (Buffer.byteLength(text) > MOST_BYTES) return failed("ResponsePayloadSizeLimitExceeded");
  return { HttpStatusCode: 200, ErrorCode: null, ErrorMessage: null, Headers: {}, Body: JSON.parse(text) };
}

const eventOf = ({ sheet, area }: HeldChange): WireEvent => ({
  messageCategory: EVENTS,
  messageType: SHEET_CHANGED,
  targetId: sheet,
  message: JSON.stringify({
    address: areaName(area),
    changeType: "RangeEdited",
    source: "Local",
    worksheetId: sheet,
  }),
});

const failed = (code: string): ServiceAnswer => ({
  HttpStatusCode: 400,
  ErrorCode: code,
  ErrorMessage: `The request failed: ${code}.`,
  Headers: {},
  Body: null,
});
