import { answerRequest, type Session } from "./answer-request.ts";
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
}

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
  if (hit && fault.action === "answer") return failed(code);
  const text = JSON.stringify(answered);
  service.received.push(Buffer.byteLength(text));
  if (Buffer.byteLength(text) > MOST_BYTES) return failed("ResponsePayloadSizeLimitExceeded");
  return { HttpStatusCode: 200, ErrorCode: null, ErrorMessage: null, Headers: {}, Body: JSON.parse(text) };
}

const failed = (code: string): ServiceAnswer => ({
  HttpStatusCode: 400,
  ErrorCode: code,
  ErrorMessage: `The request failed: ${code}.`,
  Headers: {},
  Body: null,
});
