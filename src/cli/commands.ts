/** The commands, in the order that help lists them. A new one is one new line here. */
import type { Command } from './command.ts';
import { CLIENT } from './client.ts';
import { COMPARE } from './compare.ts';
import { CUT } from './cut.ts';
import { DEMO } from './demo.ts';
import { EXPORT } from './export.ts';
import { MATCH } from './match.ts';
import { NEW } from './new.ts';
import { PLAN } from './plan.ts';
import { RATES } from './rates.ts';
import { RUNS } from './runs.ts';
import { SERVE } from './serve.ts';
import { SETUPS } from './setups.ts';
import { TRIAL } from './trial.ts';

export const COMMANDS: readonly Command[] = [
  NEW,
  PLAN,
  CLIENT,
  COMPARE,
  EXPORT,
  RUNS,
  RATES,
  SETUPS,
  MATCH,
  TRIAL,
  CUT,
  DEMO,
  SERVE,
];
