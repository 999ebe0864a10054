import type { DeliveryInput } from '../../../../contract/delivery.ts';
import type { Problem as Found } from '../../../../contract/problem.ts';
import { Button } from '../../../parts/button.tsx';
import { TextField } from '../../../parts/field.tsx';
import { Verdict } from '../../../parts/verdict.tsx';
import { type DeliveryDraft, type DeliverySoFar, saidAt } from './delivery-draft.ts';

export interface DecideProps {
  readonly draft: DeliveryDraft;
  readonly soFar: DeliverySoFar;
  readonly problems: readonly Found[];
  readonly onReason: (reason: string) => void;
  readonly decide: (decision: DeliveryInput['decision']) => Promise<void>;
}

/** What the points and the figures say together, and the decision of whoever stands at the door. */
export function Decide({ draft, soFar, problems, onReason, decide }: DecideProps) {
  const wrong = [
    ...soFar.notMet.map((c) => `${c.asked}${c.found === '' ? '' : `: ${c.found}`}`),
    ...soFar.warm.map((w) => `${w.found}, limit ${w.limit}`),
  ];
  const open = [
    ...(soFar.notLooked === 0 ? [] : [`${soFar.notLooked} of ${soFar.checks.length} points not looked at`]),
    ...soFar.unknownWarm.map((u) => `${draft.lines[u.line]?.what || `line ${u.line + 1}`}: ${u.why}`),
  ];
  const said = draft.reason.trim() !== '';
  return (
    <section className="stack decide" aria-labelledby="decide">
      <h2 id="decide">Decide</h2>
      {wrong.length > 0 ? (
        <Verdict state="does not hold" size="large" word="Not as it was asked">
          <ul>
            {wrong.map((w) => (
              <li key={w}>{w}</li>
            ))}
          </ul>
        </Verdict>
      ) : open.length > 0 ? null : (
        <Verdict
          state="holds"
          size="large"
          word={soFar.checks.length === 0 ? 'Within the limits measured' : 'Every point met'}
        />
      )}
      {open.length === 0 ? null : (
        <Verdict state="unknown" size={wrong.length > 0 ? 'usual' : 'large'} word="Not known">
          <ul>
            {open.map((w) => (
              <li key={w}>{w}</li>
            ))}
          </ul>
        </Verdict>
      )}
      <TextField
        label={wrong.length > 0 ? 'Why it is taken all the same, or why not' : 'Reason, where it is refused'}
        value={draft.reason}
        onChange={onReason}
        lines={2}
        maxLength={1_000}
        error={saidAt(problems, 'reason', 'decision')}
      />
      <div className="row">
        {soFar.mayBeAccepted ? (
          <Button kind="strong" size="line" onPress={() => decide('accepted')} busy="Writing…">
            Accept
          </Button>
        ) : null}
        {soFar.mayBeAccepted && !said ? null : (
          <Button
            kind={soFar.mayBeAccepted ? 'plain' : 'strong'}
            size="line"
            onPress={() => decide('accepted with deviation')}
            busy="Writing…"
          >
            Accept with a deviation
          </Button>
        )}
        <Button kind="danger" size="line" onPress={() => decide('refused')} busy="Writing…">
          Refuse all of it
        </Button>
      </div>
    </section>
  );
}
