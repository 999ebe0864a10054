import { Link } from 'wouter';
import checked from '../../../documents/validation.json';
import { at } from '../../addresses.ts';
import { useKitchen } from '../../kitchen.tsx';
import { Caution } from '../../parts/caution.tsx';
import './checks.css';
import { ScrollAcross } from '../../parts/scroll-across.tsx';

/** Computed numbers and short names stand in asterisks there. */
const plain = (text: string) => text.replaceAll('*', '');

type Difference = (typeof checked.differs)[number];

/** Differences that have the same reason, together; in the order in which the reasons first come. */
function byReason(differs: readonly Difference[]): (readonly [why: string, rows: readonly Difference[]])[] {
  const reasons = [...new Set(differs.map((row) => row.why))];
  return reasons.map((why) => [why, differs.filter((row) => row.why === why)]);
}

/** How the engine was checked: the head of the validation report, from the data that its run wrote. */
export function Checks() {
  const kitchen = useKitchen();
  return (
    <div className="page proof stack-wide">
      <header className="stack measure">
        <h1>How the engine was checked</h1>
        <p>
          {checked.published.checks} numbers of this program are held against {checked.published.sources}{' '}
          publications whenever it is tested: heat in a piece, steam and air, freezing, salt, what dies, what
          grows, what an animal yields. Agreement means that it computes what was published. It says nothing
          of your steamer, your piece and your probe.{' '}
          <Link href={at.place(kitchen.id, 'proof')}>Back to Proof</Link>
        </p>
        <p>
          The whole list, number by number with its source, is <code>docs/validation.md</code> in the
          program’s folder.
        </p>
        <Caution place={kitchen.place} />
      </header>
      <section className="stack" aria-labelledby="checks-had">
        <h2 id="checks-had">How the published number was had</h2>
        <ScrollAcross label="Table: how the published number was had">
          <table>
            <thead>
              <tr>
                <th scope="col">The expected value is</th>
                <th scope="col" className="number">
                  Checks
                </th>
                <th scope="col" className="number">
                  Sources
                </th>
              </tr>
            </thead>
            <tbody>
              {checked.had.map((row) => (
                <tr key={row.how}>
                  <th scope="row" className="checks-name">
                    {plain(row.how)}
                  </th>
                  <td className="number">{row.checks}</td>
                  <td className="number">{row.sources ?? 'none'}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </ScrollAcross>
      </section>
      <section className="stack" aria-labelledby="checks-subjects">
        <h2 id="checks-subjects">By subject</h2>
        <ScrollAcross label="Table: checks by subject">
          <table>
            <thead>
              <tr>
                <th scope="col">Subject</th>
                <th scope="col" className="number">
                  Against publications
                </th>
                <th scope="col" className="number">
                  Other checks
                </th>
              </tr>
            </thead>
            <tbody>
              {checked.subjects.map((row) => (
                <tr key={row.title}>
                  <th scope="row" className="checks-name">
                    {row.title}
                  </th>
                  <td className="number">{row.published}</td>
                  <td className="number">{row.other}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </ScrollAcross>
      </section>
      <section className="stack" aria-labelledby="checks-differs">
        <h2 id="checks-differs">Where it does not agree, and why</h2>
        {byReason(checked.differs).map(([why, rows]) => (
          <div className="checks-reason" key={why}>
            <p>
              {why[0]?.toUpperCase()}
              {why.slice(1)}.
            </p>
            <ul>
              {rows.map((row) => (
                <li key={`${row.title} ${row.what}`}>
                  {row.what}: published {plain(row.expected)}, ours {plain(row.ours)}
                </li>
              ))}
            </ul>
          </div>
        ))}
      </section>
      <section className="stack measure" aria-labelledby="checks-open">
        <h2 id="checks-open">What nobody has checked</h2>
        <ul>
          {checked.notValidated.map((row) => (
            <li key={row.what}>{row.what}</li>
          ))}
        </ul>
      </section>
    </div>
  );
}
