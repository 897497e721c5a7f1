/** What a plan's commands say: as much as is asked for, cautions always. */
import { fault, type Caution } from '../core/faults/fault.ts';
import type { Call, Exit, Report } from './command.ts';
import { reportRefusal, reportWords, type Findings, type Paragraph } from './report.ts';

/** The plan in words and its cautions; with --quiet the cautions alone, on the error output. */
export function reportPlan(
  call: Call,
  paragraphs: readonly Paragraph[],
  cautions: readonly Caution[],
): Report {
  const said = shorten(call, cautions);
  if (!call.flags.has('--quiet')) return reportWords(0, paragraphs, { faults: [], cautions: said });
  return { ...reportRefusal(0, { faults: [], cautions: said }, false), exit: 0 };
}

export function refusePlan(call: Call, exit: Exit, { faults, cautions }: Findings): Report {
  const json = call.flags.has('--json');
  return reportRefusal(exit, { faults, cautions: json ? cautions : shorten(call, cautions) }, json);
}

/** Three dozen usual values are a paragraph that nobody reads twice. */
function shorten(call: Call, cautions: readonly Caution[]): readonly Caution[] {
  if (call.flags.has('--verbose')) return cautions;
  return cautions.map((one) =>
    one.code === 'job.usual-values'
      ? fault('job.usual-values-counted', one.argument, one.given)
      : one,
  );
}
