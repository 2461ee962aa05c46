import { XMLParser } from "fast-xml-parser";
import { COMMAND_NAMES } from "../../src/hosts/excel/commands.ts";
import { ICON_SETS } from "../../src/hosts/excel/icons/icon-sets.ts";
import { ICON_NAMES, ICON_SIZES } from "../../src/hosts/excel/icons/render-icons.ts";
import { FLOOR } from "../../src/hosts/excel/supports.ts";

/** An element of the manifest: its name without prefix, its attributes, its text and what it holds. */
interface Element {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly text: string;
  readonly children: readonly Element[];
}

type Rule = (all: readonly Element[], own: string) => string[];

/** What is wrong with a manifest served from the address `own`, a sentence each, by the platform's published rules. */
export function manifestFaults(xml: string, own: string): string[] {
  const all = flat(elementsOf(new XMLParser(OPTIONS).parse(xml)));
  return RULES.flatMap((rule) => rule(all, own));
}

/** What the add-in cannot do without: one runtime for all, error values with a sentence, pages to print. */
const FLOORS = { SharedRuntime: "1.1", CustomFunctionsRuntime: "1.2", ExcelApi: FLOOR };

const RULES: readonly Rule[] = [
  (all) =>
    /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/i.test(textOf(all, "Id")) ? [] : ["Id is no identifier."],
  (all) => (/^\d+(\.\d+){3}$/.test(textOf(all, "Version")) ? [] : ["Version has not four parts."]),
  (all) =>
    textOf(all, "Permissions") === "ReadWriteDocument" ? [] : ["Permissions is not ReadWriteDocument."],
  (all, own) =>
    addresses(all)
      .filter((address) => !address.startsWith(`${own}/`))
      .map((address) => `${address} is not under ${own}.`),
  (all) =>
    addresses(all)
      .filter((address) => !address.startsWith("https://"))
      .map((address) => `${address} is not https.`),
  (all) => named(all, "AppDomain").map(({ text }) => `The domain ${text} is not needed.`),
  (all) =>
    named(all, "Host").some(({ attributes }) => attributes.Name === "Workbook")
      ? []
      : ["No host is a workbook."],
  (all) =>
    Object.entries(FLOORS)
      .filter(
        ([set, version]) =>
          !named(all, "Set").some(
            ({ attributes: { Name, MinVersion } }) => Name === set && MinVersion === version,
          ),
      )
      .map(([set, version]) => `${set} ${version} is not asked for.`),
  (all) => undefinedResources(all).map((id) => `Nothing is called ${id}.`),
  (all) => unusedResources(all).map((id) => `${id} is never used.`),
  (all) => repeated(resources(all).map(idOf)).map((id) => `Two resources are called ${id}.`),
  (all) => repeated(named(all, "Control").map(idOf)).map((id) => `Two controls are called ${id}.`),
  (all) =>
    resources(all)
      .filter((each) => idOf(each).length > 32)
      .map((each) => `${idOf(each)} is longer than 32 letters.`),
  (all) => [...tooLong(all, "ShortStrings", 125), ...tooLong(all, "LongStrings", 250)],
  runtime,
  (all) =>
    named(all, "FunctionName")
      .filter(({ text }) => !(COMMAND_NAMES as readonly string[]).includes(text))
      .map(({ text }) => `No command is called ${text}.`),
  places,
  icons,
  (all) => {
    const id = named(all, "Namespace")[0]?.attributes.resid;
    const name = resources(all).find((each) => idOf(each) === id)?.attributes.DefaultValue;
    return name === "CLUB" ? [] : ["The functions' namespace is not CLUB."];
  },
];

/** A shared runtime is one page for pane, commands and functions, said before the form factors. */
function runtime(all: readonly Element[]): string[] {
  const runtimes = named(all, "Runtime");
  const page = runtimes[0]?.attributes.resid;
  const host = named(all, "Host").find(({ children }) => children.length > 0);
  const order = host?.children.map(({ name }) => name) ?? [];
  const pages = [
    ...named(all, "FunctionFile"),
    ...named(all, "Page").flatMap(({ children }) => children),
    ...named(all, "Action").flatMap(({ children }) => named(children, "SourceLocation")),
  ];
  return [
    ...(runtimes.length === 1 && runtimes[0]!.attributes.lifetime === "long"
      ? []
      : ["No long-lived shared runtime."]),
    ...(order[0] === "Runtimes" ? [] : ["Runtimes do not stand before the form factors."]),
    ...(pages.every(({ attributes }) => attributes.resid === page)
      ? []
      : ["A page is not that of the runtime."]),
  ];
}

/** What a user finds: three buttons in a group of our own on a tab that is there, and one on the menu of cells. */
function places(all: readonly Element[]): string[] {
  const surface = (type: string) => flat(all.filter(({ attributes }) => attributes.type === type));
  const does = (elements: readonly Element[]) =>
    named(elements, "Action").map(
      ({ attributes, children }) => named(children, "FunctionName")[0]?.text ?? attributes.type,
    );
  const ribbon = surface("PrimaryCommandSurface");
  const groups = named(ribbon, "Group");
  const menus = named(surface("ContextMenu"), "OfficeMenu");
  const cells = menus.filter(({ attributes }) => attributes.id === "ContextMenuCell");
  const lacking = (where: string, wanted: readonly string[], found: readonly (string | undefined)[]) =>
    wanted.filter((each) => !found.includes(each)).map((each) => `${where} lacks ${each}.`);
  return [
    ...(named(ribbon, "OfficeTab").some(({ attributes }) => attributes.id === "TabHome")
      ? []
      : ["Nothing is on the Home tab."]),
    ...(groups.length === 1 && !/^(?:Tab|Group)[A-Z]/.test(idOf(groups[0]!))
      ? []
      : ["The ribbon has no group of our own."]),
    ...lacking("The ribbon", ["ShowTaskpane", "compareSelection", "fillBenchSheet"], does(flat(groups))),
    ...lacking("The menu of cells", ["compareSelection"], does(flat(cells))),
  ];
}

/** Each set of icons has the three sizes a ribbon needs, and each picture is one that is drawn. */
function icons(all: readonly Element[]): string[] {
  const drawn = ICON_NAMES.flatMap((name) =>
    ICON_SIZES.flatMap((size) =>
      Object.values(ICON_SETS).map(({ ending }) => `/assets/${name}-${size}${ending}.png`),
    ),
  );
  const pictures = addresses(all).filter((address) => address.endsWith(".png"));
  return [
    ...named(all, "Icon")
      .filter(({ children }) =>
        ["16", "32", "80"].some((size) => children.every((one) => one.attributes.size !== size)),
      )
      .map(() => "An icon lacks 16, 32 or 80 pixels."),
    ...pictures
      .filter((address) => !drawn.some((path) => address.endsWith(path)))
      .map((one) => `${one} is not drawn.`),
  ];
}

const named = (all: readonly Element[], name: string) => all.filter((each) => each.name === name);
const textOf = (all: readonly Element[], name: string) => named(all, name)[0]?.text ?? "";
const idOf = ({ attributes }: Element) => attributes.id ?? "";
const resources = (all: readonly Element[]) =>
  named(all, "Resources").flatMap(({ children }) => children.flatMap((group) => group.children));
const uses = (all: readonly Element[]) => all.flatMap(({ attributes }) => attributes.resid ?? []);

function addresses(all: readonly Element[]): string[] {
  return all
    .filter(({ name }) => /Url$|^SourceLocation$|^Image$/.test(name))
    .flatMap(({ attributes }) => attributes.DefaultValue ?? []);
}

function undefinedResources(all: readonly Element[]): string[] {
  const ids = new Set(resources(all).map(idOf));
  return uses(all).filter((id) => !ids.has(id));
}

function unusedResources(all: readonly Element[]): string[] {
  const used = new Set(uses(all));
  return resources(all)
    .map(idOf)
    .filter((id) => !used.has(id));
}

function tooLong(all: readonly Element[], group: string, most: number): string[] {
  return named(all, group)
    .flatMap(({ children }) => children)
    .filter(({ attributes }) => (attributes.DefaultValue ?? "").length > most)
    .map((each) => `${idOf(each)} is longer than ${most} letters.`);
}

const repeated = (ids: readonly string[]) => ids.filter((id, i) => ids.indexOf(id) !== i);

const OPTIONS = {
  preserveOrder: true,
  ignoreAttributes: false,
  attributeNamePrefix: "",
  removeNSPrefix: true,
  parseTagValue: false,
} as const;

type Parsed = { [name: string]: Parsed[] | Record<string, string> | string };

function elementsOf(parsed: readonly Parsed[]): Element[] {
  return parsed.flatMap((node) => {
    const [name] = Object.keys(node).filter((key) => key !== ":@");
    if (!name || name === "#text" || name.startsWith("?")) return [];
    const inside = node[name] as Parsed[];
    const text = inside.map((each) => String(each["#text"] ?? "")).join("");
    return [
      { name, attributes: (node[":@"] ?? {}) as Record<string, string>, text, children: elementsOf(inside) },
    ];
  });
}

function flat(elements: readonly Element[]): Element[] {
  return elements.flatMap((each) => [each, ...flat(each.children)]);
}
