import { ServiceError } from "./service-error.ts";
import type { WireObject } from "./wire-object.ts";

const pascal = (name: string) => name.charAt(0).toUpperCase() + name.slice(1);

/** Loaded properties of an object, by wire name and nested as asked: `format/font/bold` is Format.Font.Bold. */
export function answerQuery(object: WireObject, select: readonly string[]): Record<string, unknown> {
  if (object.items && !select.every((name) => name.toLowerCase() === "count")) {
    const inner = select.map((name) => name.replace(/^items\//, ""));
    return { _Items: object.items().map((item) => ({ ...identity(item), ...answerQuery(item, inner) })) };
  }
  const wanted = select.length === 0 || select.includes("*") ? Object.keys(object.scalars ?? {}) : select;
  const answer: Record<string, unknown> = {};
  const nested = new Map<string, string[]>();
  for (const name of wanted) {
    const [first, ...rest] = name.split("/");
    const wire = pascal(first!);
    const scalar = object.scalars?.[wire];
    if (scalar && rest.length === 0) answer[wire] = scalar.get();
    else if (object.children?.[wire])
      nested.set(wire, [...(nested.get(wire) ?? []), ...(rest.length ? [rest.join("/")] : [])]);
    else throw new ServiceError("InvalidArgument", `${object.type} has no property ${wire}.`);
  }
  for (const [name, inner] of nested) answer[name] = answerQuery(object.children![name]!(), inner);
  return answer;
}

export const identity = (object: WireObject) => (object.id === undefined ? {} : { Id: object.id });
