/** What one organism would do along a course of temperatures, by a published model: never a word on whether the food is safe. */
import { type ReactNode, useMemo, useState } from 'react';
import { type GrowAnswer, runGrow } from '../../../../contract/grow.ts';
import { InputProblems } from '../../../../contract/problem.ts';
import { findGrowthOrganism } from '../../../../core/properties/organisms-growth.ts';
import { growthCurveScene } from '../../../../documents/pictures/growth-curve.ts';
import { Basis } from '../../../parts/basis.tsx';
import { Choice } from '../../../parts/choice.tsx';
import { Figure } from '../../../parts/figure.tsx';
import { Verdict } from '../../../parts/verdict.tsx';
import { useWidth } from '../../../pictures/use-width.ts';

export interface GrowthPanelProps {
  readonly heading: string;
  readonly organisms: readonly string[];
  /** The set to begin with, where the food suggests one. */
  readonly set?: string;
  readonly log: readonly { readonly min: number; readonly C: number }[];
  readonly pH: number | null;
  readonly waterActivity: number | null;
  /** log10 above the start from which it must be looked into. */
  readonly level: number;
  readonly children?: ReactNode;
}

/** Where nothing is known: as good for growth as published. */
const best = { pH: 7.1, waterActivity: 0.997 };

type Found = { readonly ok: true; readonly with: GrowAnswer } | { readonly ok: false; readonly why: string };

function grown(input: object): Found {
  try {
    return { ok: true, with: runGrow(input) };
  } catch (error) {
    if (!(error instanceof InputProblems)) throw error;
    return { ok: false, why: error.problems.map((p) => `${p.found}: allowed ${p.allowed}`).join('; ') };
  }
}

const up = (x: number) => (Math.ceil(x * 100 - 1e-9) / 100).toFixed(2);

export function GrowthPanel(props: GrowthPanelProps) {
  const { heading, organisms, log, pH, waterActivity, level, children } = props;
  const all = organisms.flatMap((id) => {
    const organism = findGrowthOrganism(id);
    return (organism?.sets ?? []).map((set) => ({
      value: `${id} ${set.id}`,
      label: `${organism?.name}: ${set.title}`,
    }));
  });
  const wanted = all.find((o) => o.value.endsWith(` ${props.set}`)) ?? all[0];
  const [chosen, setChosen] = useState(wanted?.value ?? '');
  const [organism = '', set = ''] = chosen.split(' ');
  const [box, width] = useWidth<HTMLDivElement>();
  const [found, without] = useMemo(() => {
    const input = {
      organism,
      set,
      pH: pH ?? best.pH,
      waterActivity: waterActivity ?? best.waterActivity,
      log,
      startLog10: 0,
    };
    return [grown(input), grown({ ...input, h0: 0 })];
  }, [organism, set, pH, waterActivity, log]);
  const unknown = [
    ...(pH === null ? [`pH ${best.pH}`] : []),
    ...(waterActivity === null ? [`water activity ${best.waterActivity}`] : []),
  ];
  return (
    <section className="stack growth" aria-label={heading}>
      <h3>{heading}</h3>
      {children}
      <Choice
        label="Organism, and the food its rate was measured in"
        value={chosen}
        options={all}
        onChange={setChosen}
      />
      <div ref={box}>
        {found.ok && without.ok ? (
          <Told
            grow={found.with}
            without={without.with}
            level={level}
            width={Math.min(640, Math.max(260, width))}
          />
        ) : (
          <Verdict state="unknown" word="How fast it grows is not known here">
            {found.ok ? null : <p>{found.why}</p>}
          </Verdict>
        )}
      </div>
      {unknown.length === 0 ? null : (
        <p className="small">Not measured, so reckoned as good for growth: {unknown.join(', ')}.</p>
      )}
    </section>
  );
}

function Told({
  grow,
  without,
  level,
  width,
}: {
  readonly grow: GrowAnswer;
  readonly without: GrowAnswer;
  readonly level: number;
  readonly width: number;
}) {
  const rise = (answer: GrowAnswer) => answer.history.log10.map((x) => x - (answer.history.log10[0] ?? 0));
  // How far the published set is known to be out stands in the open; the rest is folded.
  const known = findGrowthOrganism(grow.organism)?.sets.find((set) => set.id === grow.set)?.cautions ?? [];
  const lag = grow.h0 > 0;
  const most = grow.log10IncreaseWithoutLag;
  const lines = [
    {
      name: lag ? 'with lag' : 'growth',
      min: grow.history.min.map((m) => m - (grow.history.min[0] ?? 0)),
      increase: rise(grow),
      ink: 'oxblood' as const,
    },
    ...(lag
      ? [
          {
            name: 'without',
            min: without.history.min.map((m) => m - (without.history.min[0] ?? 0)),
            increase: rise(without),
            ink: 'ember' as const,
            dash: [5, 3],
          },
        ]
      : []),
  ];
  const word =
    grow.log10Increase >= level
      ? `Look into it: ${up(grow.log10Increase)} log10 of growth by this model`
      : `${up(grow.log10Increase)} log10 of growth by this model`;
  return (
    <>
      <Verdict state={grow.log10Increase >= level ? 'not yet' : 'neutral'} word={word}>
        <p>
          {lag
            ? `Without any lag it would be ${up(most)}: the lag decides, and it is no published number. `
            : ''}
          A model’s word on one organism; it says nothing of whether the food may be eaten.
        </p>
      </Verdict>
      <Figure
        table="unseen"
        scene={growthCurveScene(lines, {
          width,
          title: `${grow.name}: growth in log10 against time`,
          level: { at: level, words: level === 1 ? 'one log' : `${level} log` },
        })}
        caption={`log10 above the start. ${grow.name}, ${grow.setTitle}.`}
      />
      {known.map((c) => (
        <p key={c} className="small">
          {c}
        </p>
      ))}
      <details className="fold">
        <summary>What must be read with this</summary>
        <ul className="fold-list">
          {grow.cautions
            .filter((c) => !known.includes(c))
            .map((c) => (
              <li key={c}>{c}</li>
            ))}
        </ul>
      </details>
      <Basis items={grow.basis} title="What the growth rests on" />
    </>
  );
}
