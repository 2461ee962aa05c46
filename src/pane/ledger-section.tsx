import type { Session } from "../fitting/session.ts";
import type { Host } from "../hosts/host.ts";
import type { UnitSet } from "../shots/unit-set.ts";
import type { DeskAction } from "./desk.ts";
import type { Draft } from "./draft.ts";
import { Section } from "./section.tsx";
import { useFetched } from "./use-fetched.ts";
import type { Maker } from "./use-making.ts";

interface LedgerSectionProps {
  readonly host: Host;
  readonly draft: Draft;
  readonly session: Session | null;
  readonly units: UnitSet;
  readonly maker: Maker;
  readonly dispatch: (action: DeskAction) => void;
}

const fetchView = () => import("./ledger-view.tsx");

/** The ledger's part of the pane; what it takes is fetched when it is opened. Each session has one of its own. */
export function LedgerSection(props: LedgerSectionProps) {
  return (
    <Section id="ledger" title="The ledger" startOpen={false} brief="every fitting, to look back on">
      {() => <FetchedLedger {...props} />}
    </Section>
  );
}

function FetchedLedger(props: LedgerSectionProps) {
  const view = useFetched(fetchView);
  return view ? (
    <view.LedgerView key={props.draft.id} {...props} />
  ) : (
    <p class="quiet">Fetching the ledger…</p>
  );
}
