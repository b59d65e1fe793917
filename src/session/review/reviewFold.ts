import type { CourseLine } from '../../core/course/line.ts';
import { measureLine } from '../../core/course/line.ts';
import type { Voice } from '../../core/cues/voicePort.ts';
import { isImported } from '../../core/plan/importedPlan.ts';
import { type AnyPlan, parseAnyPlan } from '../../core/plan/parsePracticePlan.ts';
import { beginDigest, type Digest } from '../../core/review/digest.ts';
import { beginPracticeDigest, type PracticeDigest } from '../../core/review/practiceDigest.ts';
import { type Believed, believedIn } from '../../core/run/believed.ts';
import type { RunInput } from '../../core/run/settings.ts';

/** What a kept run says of itself, read. */
export interface ReadRun {
  readonly plan: AnyPlan;
  readonly course: CourseLine | null;
  /** What was believed of phone, pod and runner when the run began. */
  readonly believed: Believed;
  /** It came without a plan: see core/plan/importedPlan. */
  readonly isImported: boolean;
}

export const readRun = (planFile: string): ReadRun | null => {
  const got = parseAnyPlan(planFile);
  if (!got.ok) return null;
  const plan = got.value;
  const course =
    plan.kind === 'race' && plan.course !== null ? measureLine(plan.course, plan.plan.distanceM) : null;
  return { plan, course, believed: believedIn(planFile), isImported: isImported(planFile) };
};

/** So much is folded before the page may draw again. */
const SLICE_MS = 40;

export interface FoldParts {
  readonly voice: Voice;
  readonly nowMs: () => number;
  /** Lets the page draw. */
  readonly breathe: () => Promise<void>;
  /** Share done, 0 to 1. */
  readonly onShare: (share: number) => void;
}

/** Folds a log in slices, so that the page stays alive. */
export const foldForReview = async (
  { plan, course, believed }: ReadRun,
  inputs: readonly RunInput[],
  { voice, nowMs, breathe, onShare }: FoldParts,
): Promise<Digest | PracticeDigest> => {
  const digesting =
    plan.kind === 'race'
      ? beginDigest({ plan: plan.plan, course, voice, ...believed })
      : beginPracticeDigest({ plan: plan.plan, voice, ...believed });
  let sliceMs = nowMs();
  for (const [i, input] of inputs.entries()) {
    digesting.take(input);
    if (nowMs() - sliceMs < SLICE_MS) continue;
    onShare(i / inputs.length);
    await breathe();
    sliceMs = nowMs();
  }
  return digesting.end();
};

export const isPractice = (digest: Digest | PracticeDigest): digest is PracticeDigest => 'kind' in digest;
