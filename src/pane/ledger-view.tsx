import { useRef, useState } from "preact/hooks";
import type { Session } from "../fitting/session.ts";
import type { Host, Run } from "../hosts/host.ts";
import type { LookBack } from "../ledger/look-back.ts";
import { isProblem } from "../outcome/problem.ts";
import type { UnitSet } from "../shots/unit-set.ts";
import { CancelButton } from "./cancel-button.tsx";
import type { DeskAction } from "./desk.ts";
import type { Draft } from "./draft.ts";
import type { BroughtIn } from "./ledger-bring-in.ts";
import { LedgerBringIn } from "./ledger-bring-in-view.tsx";
import { LedgerLookBack } from "./ledger-look-back.tsx";
import { LedgerTravel } from "./ledger-travel.tsx";
import type { Maker } from "./use-making.ts";

interface LedgerViewProps {
  readonly host: Host;
  readonly draft: Draft;
  readonly session: Session | null;
  readonly units: UnitSet;
  readonly maker: Maker;
  readonly dispatch: (action: DeskAction) => void;
}

const desk = () => import("./ledger-desk.ts");

/** Something to be done with what the ledger takes; answers what is to be said of it. */
export type LedgerWork = (tools: Awaited<ReturnType<typeof desk>>, running: Run) => Promise<string>;

/** What is done by then needs no button to stop it. */
const LONG = 500;

/** The ledger in the workbook: keep this session, look back, bring in a sheet, sum the shop up, take a player out. */
export function LedgerView({ host, draft, session, units, maker, dispatch }: LedgerViewProps) {
  const [said, setSaid] = useState("");
  const [busy, setBusy] = useState(false);
  const [long, setLong] = useState(false);
  const stop = useRef<AbortController | null>(null);
  const line = useRef<HTMLParagraphElement>(null);
  const [ordered, setOrdered] = useState(draft.ledger?.ordered ?? "");
  const [back, setBack] = useState<readonly LookBack[]>([]);
  const [brought, setBrought] = useState<BroughtIn | null>(null);
  const player = session?.player.trim() ?? "";

  /** One thing at a time; a host answers problems, and what breaks that promise still ends in a sentence. */
  const run = async (work: LedgerWork) => {
    if (busy) return;
    setBusy(true);
    setSaid("Working\u2026");
    stop.current = new AbortController();
    const waited = setTimeout(() => setLong(true), LONG);
    // By quarters, so that those who hear it are not told of every step.
    const progress = (share: number) => {
      const quarters = Math.floor(share * 4) * 25;
      setSaid(quarters > 0 && quarters < 100 ? `Working\u2026 ${quarters} %` : "Working\u2026");
    };
    setSaid(
      await desk()
        .then((tools) => work(tools, { progress, signal: stop.current!.signal }))
        .catch((error) => `That did not work: ${String(error)}`),
    );
    clearTimeout(waited);
    setLong(false);
    setBusy(false);
  };
  const keep: LedgerWork = async ({ keepSession, keepWords }, running) => {
    if (!session) return "There are no shots to keep.";
    // Only what was said here is taken back here; what people wrote into the table themselves stays.
    const was = draft.ledger?.ordered ?? "";
    const changed = { ...(was ? { [was]: null } : {}), ...(ordered ? { [ordered]: ordered } : {}) };
    const orders = ordered === was ? {} : changed;
    const kept = await keepSession(host, session, { ordered: orders }, draft.ledger, running);
    if (!isProblem(kept)) {
      const ledger = { session: kept.session, shots: session.table.size, ordered };
      dispatch({ does: "inLedger", id: draft.id, text: draft.text, ledger });
    }
    return keepWords(kept);
  };
  const look: LedgerWork = async ({ ledgerOf, lookBack, unkeptWords, unlessStopped }, { signal }) => {
    setBack([]);
    const rows = await unlessStopped(ledgerOf(host), signal);
    if (isProblem(rows)) return rows.message;
    const found = lookBack(rows, player, units);
    if (!isProblem(found)) setBack(found);
    const unkept = unkeptWords(rows, session, draft.ledger?.session);
    return [isProblem(found) ? found.message : "", unkept].filter((words) => words !== "").join(" ");
  };
  const shop: LedgerWork = async (tools, { progress, signal }) => {
    const rows = await tools.unlessStopped(tools.ledgerOf(host), signal);
    if (isProblem(rows)) return rows.message;
    if (rows.length === 0) return "The ledger is empty; keep a session first.";
    const found = await tools.inSlices(tools.shopFindings(rows, units), progress, signal);
    if (found === null) return tools.STOPPED.message;
    await maker.make(async (taken, made) => tools.shopWorkbook(found, taken, made));
    return "";
  };
  const read: LedgerWork = async ({ bringInSelected, unlessStopped }, { signal }) => {
    const found = await unlessStopped(bringInSelected(host), signal);
    setBrought(isProblem(found) ? null : found);
    return isProblem(found) ? found.message : "";
  };
  const keepBrought: LedgerWork = async ({ keepRows, keepWords }, running) => {
    const kept = await keepRows(host, brought?.mapped.rows ?? [], [], running);
    // What could not be kept stays in sight, to be tried again.
    if (!isProblem(kept)) setBrought(null);
    return keepWords(kept);
  };
  const forget: LedgerWork = async ({ forgetPlayer, forgottenWords }, running) => {
    const gone = await forgetPlayer(host, player, running);
    return isProblem(gone) ? gone.message : forgottenWords(player, gone);
  };

  return (
    <div class="ledger">
      {session && (
        <>
          <label for="ordered">What was ordered</label>
          <select id="ordered" value={ordered} onChange={(event) => setOrdered(event.currentTarget.value)}>
            <option value="">nothing yet</option>
            {session.builds.map(({ name }) => (
              <option key={name}>{name}</option>
            ))}
          </select>
        </>
      )}
      <div class="buttons">
        <button
          type="button"
          id="keep-in-ledger"
          disabled={!session}
          aria-disabled={busy}
          onClick={() => run(keep)}
        >
          Keep in the ledger
        </button>
        <button
          type="button"
          id="look-back"
          disabled={player === ""}
          aria-disabled={busy}
          onClick={() => run(look)}
        >
          Look back at this player
        </button>
        <button type="button" id="shop-sheet" aria-disabled={busy} onClick={() => run(shop)}>
          What the shop's data say
        </button>
        <button type="button" id="read-tracking" aria-disabled={busy} onClick={() => run(read)}>
          Bring in the selected tracking sheet
        </button>
        <button
          type="button"
          id="forget-player"
          disabled={player === ""}
          aria-disabled={busy}
          onClick={() => run(forget)}
        >
          Take this player out
        </button>
      </div>
      <p role="status" id="ledger-said" ref={line} tabIndex={-1}>
        {said}
      </p>
      {long && <CancelButton id="stop-ledger" cancel={() => stop.current?.abort()} after={line} />}
      <LedgerLookBack found={back} />
      {brought && <LedgerBringIn brought={brought} run={run} onBrought={setBrought} keep={keepBrought} />}
      <LedgerTravel host={host} run={run} onBrought={setBrought} />
    </div>
  );
}
