/** What the keep step and the steps before it say of a food's life, as `keep` asks for it. Pure. */
import type { KeepInput } from './keep.ts';
import type { Place } from './records.ts';
import type { Method, StepOf } from './steps.ts';

type Keep = StepOf<'keep'>;

/** 90 °C for 10 min counts only where a cook step before it is held to it, and only in the pack: wrapped or filled before. */
function heatedInPack(method: Method, step: Keep): boolean {
  const before = method.slice(
    0,
    Math.max(
      0,
      method.findIndex((s) => s.id === step.id),
    ),
  );
  const cook = before.findLastIndex((s) => s.kind === 'cook');
  const cooked = before[cook];
  if (cooked?.kind !== 'cook') return false;
  const asked = cooked.rules.some((id) => id === 'gb-90c-10min' || id === 'us-90c-10min');
  return asked && before.slice(0, cook).some((s) => s.kind === 'wrap' || s.kind === 'fill');
}

export function keepInputOf(step: Keep, method: Method, place: Place): KeepInput {
  const at = method.findIndex((s) => s.id === step.id);
  const { pH, waterActivity, waterPhaseSaltPct } = step;
  const scheme = step.rules?.includes('gb-cook-chill-keep-3c') === true ? ('cook-chill' as const) : undefined;
  return {
    place,
    ready: method.slice(0, Math.max(0, at)).some((s) => s.kind === 'cook'),
    packed: step.packed === 'open or covered' ? 'air' : step.packed === 'gas-packed' ? 'gas' : 'vacuum',
    keptC: step.maxC,
    heatedInPack: heatedInPack(method, step),
    ...(pH === undefined ? {} : { pH }),
    ...(waterActivity === undefined ? {} : { waterActivity }),
    ...(waterPhaseSaltPct === undefined ? {} : { waterPhaseSaltPct }),
    ...(scheme === undefined ? {} : { scheme }),
  };
}
