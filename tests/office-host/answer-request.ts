import { answerQuery, identity } from "./answer-query.ts";
import { root } from "./root.ts";
import { ServiceError } from "./service-error.ts";
import {
  ActionType,
  PathType,
  type WireAction,
  type WireAnswer,
  type WireArguments,
  type WireRequest,
} from "./wire-format.ts";
import { isWireObject, type WireObject } from "./wire-object.ts";
import type { HeldWorkbook } from "./workbook.ts";

/** What lasts from one request to the next: ranges kept by reference. */
export interface Session {
  readonly workbook: HeldWorkbook;
  readonly references: Map<string, WireObject>;
}

/**
 * Carries out one request of the batch protocol. Actions run in order; a path is walked once, at its first use; the
 * first action that fails ends the request and what ran before it stays done, as at the service.
 */
export function answerRequest(
  session: Session,
  request: WireRequest,
  failAt?: (index: number) => void,
): WireAnswer {
  const walk = walker(session, request);
  const results: { ActionId: number; Value: unknown }[] = [];
  for (const [index, action] of request.Actions.entries()) {
    try {
      failAt?.(index);
      results.push({ ActionId: action.Id, Value: carryOut(session, walk, action) });
    } catch (error) {
      if (!(error instanceof ServiceError)) throw error;
      const Location = `${request.ObjectPaths[action.ObjectPathId]?.Name ?? ""}.${action.Name}`;
      return {
        Error: { Code: error.code, Message: error.message, Location, ActionIndex: index },
        Results: results,
        TraceIds: [],
      };
    }
  }
  return { Error: null, Results: results, TraceIds: [] };
}

interface Walker {
  object(id: number): WireObject | null;
  given(info: WireArguments | undefined): unknown[];
  readonly kept: Map<number, string>;
}

function walker(session: Session, { ObjectPaths }: WireRequest): Walker {
  const walked = new Map<number, WireObject | null>();
  const object = (id: number): WireObject | null => {
    if (!walked.has(id)) walked.set(id, step(id));
    return walked.get(id)!;
  };
  const given = (info: WireArguments | undefined) =>
    (info?.Arguments ?? []).map((argument, i) => {
      const path = info?.ReferencedObjectPathIds?.[i];
      return typeof path === "number" && path !== 0 ? object(path) : (argument ?? undefined);
    });
  const step = (id: number): WireObject | null => {
    const path = ObjectPaths[id];
    if (!path) throw new ServiceError("InvalidObjectPath", `No path ${id} in the request.`);
    if (path.ObjectPathType === PathType.root) return root(session.workbook, session.references);
    if (path.ObjectPathType === PathType.none) return null;
    if (path.ObjectPathType === PathType.reference) {
      const kept = session.references.get(path.Name);
      if (!kept)
        throw new ServiceError("InvalidReference", "This reference is not valid for the current operation.");
      return kept;
    }
    const parent = object(path.ParentObjectPathId!);
    if (!parent) return null;
    if (path.ObjectPathType === PathType.property)
      return (parent.children?.[path.Name] ?? missing(parent, path.Name))();
    if (path.ObjectPathType === PathType.indexer) {
      return (parent.item ?? missing(parent, "item"))(given(path.ArgumentInfo)[0]);
    }
    const answer = (parent.methods?.[path.Name] ?? missing(parent, path.Name))(...given(path.ArgumentInfo));
    if (answer !== null && !isWireObject(answer))
      throw new Error(`${parent.type}.${path.Name} answered no object`);
    return answer as WireObject | null;
  };
  return { object, given, kept: new Map() };
}

function carryOut(session: Session, walk: Walker, action: WireAction): unknown {
  // A trace marks a place in the request and is made on no object.
  if (action.ActionType === ActionType.trace) return null;
  const object = walk.object(action.ObjectPathId);
  if (!object) return null;
  switch (action.ActionType) {
    case ActionType.instantiate: {
      const reference = walk.kept.get(action.ObjectPathId);
      return { ...identity(object), ...(reference && { _ReferenceId: reference }) };
    }
    case ActionType.query:
      return answerQuery(object, action.QueryInfo?.Select ?? []);
    case ActionType.setProperty: {
      const set = object.scalars?.[action.Name]?.set ?? missing(object, action.Name);
      set(walk.given(action.ArgumentInfo)[0]);
      return null;
    }
    case ActionType.method: {
      if (action.Name === "_KeepReference" && object.kept) {
        const reference = `r${++session.workbook.last}`;
        session.references.set(reference, object);
        walk.kept.set(action.ObjectPathId, reference);
        return null;
      }
      const method = object.methods?.[action.Name] ?? missing(object, action.Name);
      return method(...walk.given(action.ArgumentInfo)) ?? null;
    }
    default:
      throw new ServiceError("InvalidRequest", `No such action ${action.ActionType}.`);
  }
}

function missing(object: WireObject, name: string): never {
  throw new ServiceError("ApiNotFound", `${object.type} has no ${name} in this host, or it is read-only.`);
}
