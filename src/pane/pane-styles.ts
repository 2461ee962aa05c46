import { BUILD_COLORS } from "../sheets/palette.ts";
import { BUILD_COLORS_DARK, DARK, HOUSE, LIGHT, SHARED } from "./theme.ts";

/** The pane's styles as one text. Everything is inside `.bench`, so that the page around it stays as it is. */
export function paneStyles(): string {
  const light = variables({ ...LIGHT, ...HOUSE.light }, BUILD_COLORS);
  const dark = variables({ ...DARK, ...HOUSE.dark }, BUILD_COLORS_DARK);
  return `
.bench{${light};${variables(SHARED, [])};color-scheme:light}
@media (prefers-color-scheme:dark){.bench:not([data-theme=light]){${dark};color-scheme:dark}}
.bench[data-theme=dark]{${dark};color-scheme:dark}
@media (forced-colors:active){.bench.bench{${FORCED}}}
${RULES}`;
}

function variables(values: Readonly<Record<string, string>>, builds: readonly string[]): string {
  const named = Object.entries(values).map(([name, value]) => `--${name}:${value}`);
  return [...named, ...builds.map((color, i) => `--build${i}:${color}`)].join(";");
}

/** With forced colours builds are told apart by shape alone. */
const FORCED = [
  "--surface:Canvas;--raised:Canvas;--ink:CanvasText;--quiet:CanvasText;--line:CanvasText;--edge:ButtonBorder",
  "--accent:Highlight;--onAccent:HighlightText;--tint:Canvas;--warnInk:CanvasText;--warnFill:Canvas",
  ...BUILD_COLORS.map((_, i) => `--build${i}:CanvasText`),
].join(";");

const RULES = `
.bench,.bench *{box-sizing:border-box}
.bench{background:var(--surface);color:var(--ink);font:var(--text)/1.4 var(--font);display:flex;flex-direction:column;min-height:100%;overflow-wrap:anywhere}
.bench h2{font-size:var(--text);margin:0;display:inline}
.bench h3{font-size:var(--text);margin:12px 0 4px}
.bench p{margin:0 0 8px}
.bench .head{padding:12px;display:flex;flex-wrap:wrap;gap:8px;justify-content:space-between;align-items:center;border-bottom:1px solid var(--line)}
.bench .notice{padding:0 12px 12px}
.bench .follow{padding:12px;border-bottom:1px solid var(--line)}
.bench .parts{flex:1}
.bench caption{text-align:left;padding-bottom:4px;font-size:var(--small);color:var(--quiet)}
.bench .loading{padding:16px;color:var(--quiet)}
.bench .section{border-bottom:1px solid var(--line)}
.bench summary{padding:10px 12px;cursor:pointer}
.bench .card summary{padding:4px 0 4px 24px;font-size:var(--small);color:var(--quiet)}
.bench .brief{color:var(--quiet);font-size:var(--small);margin-left:8px}
.bench .brief.alert{color:var(--warnInk);background:var(--warnFill);padding:1px 6px;border-radius:var(--corner)}
.bench .body{padding:0 12px 12px}
.bench .steps{margin:0 0 12px;padding-left:20px;color:var(--quiet)}
.bench label{display:block;text-align:left;margin-bottom:4px;font-size:var(--small);color:var(--quiet)}
.bench button,.bench input,.bench select,.bench textarea{font:inherit;color:inherit;background:var(--surface);border:1px solid var(--edge);border-radius:var(--corner);padding:5px 10px;min-height:32px;max-width:100%}
.bench textarea{width:100%;font-family:ui-monospace,Consolas,monospace;font-size:var(--small);resize:vertical}
.bench input:not([type=checkbox],[type=radio]){width:100%;min-width:0}
.bench select{padding:4px 4px}
.bench button{cursor:pointer;transition:background-color var(--quick) var(--ease)}
.bench button:hover:not(:disabled){background:var(--tint)}
.bench button:disabled{cursor:default;color:var(--quiet);border-style:dashed}
.bench .primary{background:var(--accent);color:var(--onAccent);border-color:var(--accent);font-weight:600;flex:1}
.bench .primary:hover:not(:disabled){background:var(--accent);filter:brightness(1.1)}
.bench .primary:disabled{background:var(--raised)}
.bench :focus-visible{outline:2px solid var(--accent);outline-offset:2px}
.bench .buttons{display:flex;flex-wrap:wrap;gap:8px;margin:8px 0 0}
.bench .head .buttons{margin:0;min-width:0}
.bench .session{width:100%;flex-wrap:wrap}
.bench .session select{flex:1 1 260px;min-width:0}
.bench [aria-disabled=true]{opacity:.6;cursor:default}
.bench .row{display:flex;gap:8px}
.bench .row button{flex:none}
.bench .add{margin-top:12px}
.bench .drop.over{outline:2px dashed var(--accent);outline-offset:4px}
.bench .problem{color:var(--warnInk);background:var(--warnFill);padding:8px;border-radius:var(--corner);margin:8px 0}
.bench .body>.quiet{margin-top:8px}
.bench .quiet{color:var(--quiet);font-size:var(--small)}
.bench small{display:block;color:var(--quiet);font-size:var(--small);font-weight:400}
.bench table{border-collapse:separate;border-spacing:0;width:100%;font-variant-numeric:tabular-nums}
.bench th,.bench td{padding:4px 6px 4px 0;text-align:left;border-bottom:1px solid var(--line);vertical-align:top;font-weight:400}
.bench thead th{font-weight:600}
.bench :is(.figures,.carries) :is(td,thead th){text-align:right}
.bench :is(.figures,.carries) tbody th{background-clip:padding-box;min-width:96px;position:sticky;left:0;background:var(--surface)}
.bench .columns select{width:100%;padding:4px 0 4px 2px;font-size:var(--small)}
.bench .columns{table-layout:fixed}
.bench .columns th:nth-child(2){width:44%}
.bench .columns :is(td,th):last-child{width:23%;padding-right:0}
.bench .columns :is(td,th){overflow-wrap:break-word}
.bench .wide{overflow-x:auto}
.bench .tall{overflow-y:auto;max-height:320px}
.bench :is(.figures,.carries) :is(td,thead th){white-space:nowrap;padding-left:10px}
.bench :is(.figures,.carries) thead th{white-space:normal;min-width:76px;max-width:120px;vertical-align:bottom}
.bench fieldset{border:0;padding:0;margin:12px 0 0;min-width:0}
.bench legend{padding:0;margin-bottom:4px;font-weight:600}
.bench .card{border-top:1px solid var(--line);padding:4px 0}
.bench .fields{display:grid;grid-template-columns:repeat(auto-fill,minmax(130px,1fr));gap:8px;align-items:end;margin-bottom:8px}
.bench .fields .whole{grid-column:1/-1}
.bench .window{display:grid;grid-template-columns:1fr 1fr;gap:4px 8px;align-items:end;margin-bottom:12px}
.bench .window>p{margin:0;grid-column:1/-1}
.bench .window small{display:inline;margin-left:4px}
.bench .meanings summary{padding:8px 0;font-size:var(--small);color:var(--quiet)}
.bench .meanings :is(dl,dd){margin:0}
.bench .meanings div{display:grid;grid-template-columns:minmax(96px,1fr) 2fr;gap:8px;padding:2px 0;font-size:var(--small)}
.bench .rounds{padding-left:28px;margin:0 0 8px}
.bench .rounds li{padding:3px 0;border-bottom:1px solid var(--line)}
.bench .set td.doubt{display:table-cell;text-align:left;white-space:normal}
.bench .set :is(thead th,tbody th,td){overflow-wrap:break-word;min-width:44px;padding-left:6px;white-space:normal}
.bench :is(.set,.figures,.carries) :is(thead,tbody) th:first-child{padding-left:0;text-align:left}
.bench .roomy{grid-template-columns:repeat(auto-fill,minmax(min(100%,260px),1fr))}
.bench .fields select{width:100%}
.bench .choice,.bench .shot label{display:flex;gap:8px;align-items:center;color:var(--ink);font-size:var(--text);margin:0;padding:3px 0;min-height:28px}
.bench input:is([type=checkbox],[type=radio]){width:18px;height:18px;min-height:0;margin:0;flex:none;accent-color:var(--accent)}
.bench .left-out{color:var(--quiet);text-decoration:line-through}
.bench .doubt{margin:0 0 4px 26px;padding:2px 6px;font-size:var(--small);color:var(--warnInk);background:var(--warnFill);border-left:3px solid currentColor}
.bench .headline{font-size:var(--large);font-weight:600;color:var(--accent);margin:12px 0 8px}
.bench .next{background:var(--tint);border-left:3px solid var(--accent);padding:8px}
.bench figure{margin:12px 0}
.bench figure select{margin-bottom:8px}
.bench .wide+p,.bench fieldset+p{margin-top:8px}
.bench .picture{width:100%;overflow:hidden}
.bench .picture svg{display:block;max-width:100%;height:auto}
.bench .sign svg{vertical-align:-2px}
.bench .legend{list-style:none;display:flex;flex-wrap:wrap;gap:2px 14px;padding:0;margin:4px 0}
.bench .heard{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%);white-space:nowrap}
.bench .problems,.bench .plain{margin:0;padding-left:18px}
.bench code{font-family:ui-monospace,Consolas,monospace;background:var(--raised);padding:0 4px;margin:0 4px}
.bench .make{position:sticky;bottom:0;background:var(--surface);border-top:1px solid var(--line);padding:10px 12px}
.bench .make .buttons{margin:0}
.bench .make [role=status]{margin:0}
.bench .make [role=status]:not(:empty){margin-bottom:8px}
.bench progress{width:100%;accent-color:var(--accent)}
@media (max-height:420px){.bench .make{position:static}}
@media (prefers-reduced-motion:reduce){.bench *{transition:none!important}}
@media (forced-colors:active){.bench .primary{forced-color-adjust:none}}
`;
