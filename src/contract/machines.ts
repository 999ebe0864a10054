/** The kitchen's own machines and what probe logs have said of them. */
import { z } from 'zod';
import { FittedValue, FitWithoutLog } from './fit.ts';
import { Id, Instant, Note, Text } from './quantities.ts';

/** One fit kept for a machine: what was asked of which log, and what came out. Added to, never changed. */
export const MachineFit = z.strictObject({
  id: Id,
  machineId: Id,
  logId: Id,
  logName: z.string(),
  /** Name of the stage whose coefficient is the machine's. */
  stage: z.string(),
  /** The minute of the programme at which the log's first reading stands. */
  fromMin: z.number(),
  hWm2K: FittedValue,
  /** Everything that was fitted with it, by name. */
  fitted: z.record(z.string(), FittedValue),
  rmseC: z.number(),
  warnings: z.array(z.string()),
  /** Version of this program that fitted it, and the fingerprint of all that went in, readings included. */
  engine: z.string(),
  inputSha256: z.string(),
  at: Instant,
  by: z.string(),
});
export type MachineFit = z.infer<typeof MachineFit>;

export const Machine = z.strictObject({
  id: Id,
  name: Text(80),
  /** What kind of medium it is: a name of the table of media, or the kitchen's own word. */
  medium: Text(40),
  note: Note(500),
  createdAt: Instant,
  fits: z.int(),
  /** The newest fit, if there is one. */
  latest: MachineFit.nullable(),
});
export type Machine = z.infer<typeof Machine>;

const K = '/api/kitchens/:kitchenId';

export const machineOperations = {
  machines: {
    method: 'GET',
    path: `${K}/machines`,
    summary: 'The kitchen’s machines, each with its newest fitted surface coefficient.',
    result: z.array(Machine),
  },
  addMachine: {
    method: 'POST',
    path: `${K}/machines`,
    summary: 'Name a machine.',
    body: z.strictObject({ name: Text(80), medium: Text(40), note: Note(500) }),
    result: Machine,
    signed: true,
  },
  machineFits: {
    method: 'GET',
    path: `${K}/machines/:machineId/fits`,
    summary: 'What probe logs have said of a machine, newest first.',
    result: z.array(MachineFit),
  },
  keepFit: {
    method: 'POST',
    path: `${K}/machines/:machineId/fits`,
    summary:
      'Fit a kept log, here and now, and keep what comes out for a machine. What a browser fitted is not taken over; the same id sent again is kept once.',
    body: z.strictObject({
      id: Id,
      logId: Id,
      fromMin: z.number().min(-1_440).max(1_440),
      /** Whose coefficient is this machine's, counted from 0; one of those that are fitted. */
      stage: z.int().min(0).max(99),
      input: FitWithoutLog,
    }),
    result: MachineFit,
    signed: true,
  },
  fit: {
    method: 'POST',
    path: '/api/fit',
    summary: 'A kitchen’s own coefficients from a probe log (the same as the command of that name).',
    body: z.unknown(),
    result: z.unknown(),
  },
} as const;
