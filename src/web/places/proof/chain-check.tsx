import { useState } from 'react';
import type { ResultOf } from '../../../contract/operations.ts';
import { call } from '../../api.ts';
import { useKitchen } from '../../kitchen.tsx';
import { Button } from '../../parts/button.tsx';
import { Verdict } from '../../parts/verdict.tsx';
import { clock } from '../line/clock.ts';
import { chainWords } from './chain.ts';

/** Walks the whole journal on the server and says in words what came of it. */
export function ChainCheck() {
  const kitchen = useKitchen();
  const [check, setCheck] = useState<ResultOf<'checkJournal'> | null>(null);
  const said = check === null ? null : chainWords(check);
  return (
    <div className="stack measure">
      <p className="quiet">
        Each line carries the fingerprint of the line before it, so that a change in any of them shows.
      </p>
      <div className="row">
        <Button
          busy="Walking the chain…"
          onPress={async () => {
            setCheck(null);
            setCheck(await call('checkJournal', { params: { kitchenId: kitchen.id } }));
          }}
        >
          Check the chain
        </Button>
      </div>
      <div aria-live="polite">
        {check === null || said === null ? null : (
          <Verdict
            state={said.holds ? 'holds' : check.lines === 0 ? 'unknown' : 'does not hold'}
            word={said.holds ? 'Unbroken' : check.lines === 0 ? 'Nothing to check' : 'Broken'}
          >
            {said.words} <span className="quiet">Checked {clock(check.checkedAt, kitchen.zone, true)}.</span>
          </Verdict>
        )}
      </div>
    </div>
  );
}
