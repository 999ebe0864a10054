/** Where the salt that a growth panel counts comes from, and how to overrule it. */
import type { SaltBefore } from './use-salt-before.ts';

export function SaltBeforeWords({
  salt,
  overruled,
  overruleBy,
}: {
  readonly salt: SaltBefore | null;
  /** Something measured stands in its place. */
  readonly overruled: boolean;
  readonly overruleBy: string;
}) {
  if (salt === null) return null;
  if (salt.pct === null)
    return salt.why === '' ? (
      <p className="small quiet">Working out the salt from “{salt.from}”…</p>
    ) : (
      <p className="small">
        From “{salt.from}”: no salt is counted, because {salt.why}.
      </p>
    );
  return (
    <p className="small">
      From “{salt.from}”: {salt.pct.toFixed(1)} % salt in the water of the least salted place, water activity{' '}
      {salt.waterActivity?.toFixed(3)}, reckoned with the slowest published salt, not measured. Soaking or
      simmering that is only written in the words of a step is not taken off: count none of it then.{' '}
      {overruled
        ? 'What you measured counts instead.'
        : `Counted for what may grow; never for how many days it keeps, which needs it measured. ${overruleBy}`}
    </p>
  );
}
