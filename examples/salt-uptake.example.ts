import { cure } from '../src/core/salt/cure.ts';
import type { CureMedium } from '../src/core/salt/cure-piece.ts';
import type { SaltShape } from '../src/core/salt/series.ts';
import type { Example, Row } from './case.ts';
import { kept } from './kept.ts';

const scipy = kept('salt');

const D = 2e-10;
const R = 0.01;
const water = 0.7576;

function stageOf(shape: SaltShape, medium: CureMedium, Fo: number) {
  const [stage] = cure({
    piece: { shape, size: 2 * R, exposedFaces: 2, mass: 1, water, salt: 0 },
    stages: [{ medium, temperature: 5, time: (Fo * R * R) / D }],
    diffusivity: D,
  }).stages;
  if (stage === undefined) throw new Error('no stage');
  return stage;
}

export const example: Example = {
  title: 'Salt into simple shapes against their exact series',
  story: `A piece without salt lies in brine: once in so much that its strength does not change, once in as much water as the piece
itself holds, so that the brine weakens as it gives salt. For slab, cylinder and sphere both are known exactly as infinite
series. The series were summed with scipy; we
compare the share of its final salt that the piece has taken up, and the strength at its middle.`,
  equation: 'M_t/M_∞ = 1 − Σ w_n·exp(−q_n²·D·t/L²)',
  sources: ['crank-1975'],
  run() {
    const rows: Row[] = [];
    const limited: CureMedium = { kind: 'bath', mass: water / 0.94, salt: 0.06 };
    const endless: CureMedium = { kind: 'kept', salt: 0.06 };
    const common = {
      source: 'crank-1975',
      confidence: 'computed' as const,
      tolerance: 1e-4,
      unit: '-',
      why: 'a ten-thousandth of the salt is less than a kitchen weighs',
    };
    for (const shape of ['slab', 'cylinder', 'sphere'] as const)
      for (const Fo of [0.001, 0.01, 0.1, 0.1728, 0.5, 1]) {
        const open = stageOf(shape, endless, Fo);
        const closed = stageOf(shape, limited, Fo);
        const core = open.end.coreWaterPhase;
        rows.push(
          {
            quantity: `${shape}, Fo ${Fo}: uptake, endless bath`,
            expected: scipy(`${shape} endless ${Fo}`),
            ours: open.takenKg / open.equilibrium.saltKg,
            ...common,
          },
          {
            quantity: `${shape}, Fo ${Fo}: uptake, as much water in bath and piece`,
            expected: scipy(`${shape} limited 1 ${Fo}`),
            ours: closed.takenKg / closed.equilibrium.saltKg,
            ...common,
          },
        );
        if (Fo >= 0.01)
          rows.push({
            quantity: `${shape}, Fo ${Fo}: middle, endless bath`,
            expected: scipy(`${shape} middle ${Fo}`),
            ours: core / (1 - core) / (0.06 / 0.94),
            ...common,
          });
      }
    return rows;
  },
};
