import { invalidArgument } from "./service-error.ts";
import type { Scalar, WireObject } from "./wire-object.ts";

/**
 * What a class of plain properties holds: its scalars by wire name, each with what it takes, and its parts. Only
 * what the product uses is listed; anything else is answered with an error rather than quietly kept.
 */
export interface Shape {
  readonly scalars?: Readonly<Record<string, Check>>;
  readonly children?: Readonly<Record<string, Shape>>;
  /** Methods that do no more than set properties. */
  readonly methods?: Readonly<Record<string, (store: Store, ...given: unknown[]) => void>>;
  /** A collection reached by key, such as borders by their edge. */
  readonly keys?: { readonly allowed: readonly string[]; readonly shape: Shape };
}

/** Where the properties are kept: `Title/Text` in a chart's bag, `Font/Bold` painted on an area. */
export interface Store {
  get(path: string): unknown;
  set(path: string, value: unknown): void;
}

export type Check = (value: unknown) => boolean;

export const flag: Check = (value) => typeof value === "boolean";
export const text: Check = (value) => typeof value === "string";
export const any: Check = () => true;
export const between =
  (least: number, most: number): Check =>
  (value) =>
    typeof value === "number" && value >= least && value <= most;
/** A bound that "" sets back to automatic. */
export const bound: Check = (value) => typeof value === "number" || value === "";
export const oneOf =
  (...allowed: string[]): Check =>
  (value) =>
    allowed.includes(value as string);
export const colour: Check = (value) => typeof value === "string" && /^(#[0-9a-f]{6})?$/i.test(value);

/** The wire object of a shape over a store. */
export function shaped(type: string, shape: Shape, store: Store, path = ""): WireObject {
  const at = (name: string) => (path ? `${path}/${name}` : name);
  return {
    type,
    scalars: mapped(
      shape.scalars,
      (check, name): Scalar => ({
        get: () => store.get(at(name)) ?? null,
        set: (value) => {
          if (!check(value)) throw invalidArgument(`${type}.${name} = ${JSON.stringify(value)}`);
          store.set(at(name), value);
        },
      }),
    ),
    children: mapped(
      shape.children,
      (child, name) => () => shaped(`${type}.${name}`, child, store, at(name)),
    ),
    methods: mapped(
      shape.methods,
      (method) =>
        (...given: unknown[]) =>
          method(
            { get: (name) => store.get(at(name)), set: (name, value) => store.set(at(name), value) },
            ...given,
          ),
    ),
    ...(shape.keys && {
      item: (key: unknown) => {
        const { allowed, shape: inner } = shape.keys!;
        if (!allowed.includes(String(key))) throw invalidArgument(`${type}[${key}]`);
        return shaped(`${type}.${key}`, inner, store, at(String(key)));
      },
    }),
  };
}

/** Keeps properties in a plain object. */
export function bagStore(bag: Record<string, unknown>): Store {
  return {
    get: (path) => bag[path],
    set: (path, value) => {
      bag[path] = value;
    },
  };
}

export function mapped<A, B>(
  table: Readonly<Record<string, A>> | undefined,
  turn: (value: A, name: string) => B,
): Record<string, B> {
  return Object.fromEntries(Object.entries(table ?? {}).map(([name, value]) => [name, turn(value, name)]));
}
