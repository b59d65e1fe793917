import type { Cue } from '../cues/cue.ts';
import { aheadFor, byFor } from '../cues/rounding.ts';
import type { Departure, Evidence } from '../drift/departure.ts';
import { paceReason } from '../drift/reason.ts';
import { sizeOf } from '../drift/size.ts';
import { type DistanceUnit, M_PER_KM, metresPer } from '../units/units.ts';
import { cueOf, IMPORTANCE } from './cues.ts';
import type { Going } from './going.ts';
import { type LegNow, legEndMs } from './legNow.ts';

/**
 * Ease and quicken within a leg, by the same sequential test as in a race (core/drift/departure.ts). Counted from when
 * the runner has had time to find the pace; not in the last seconds, when the change is what matters.
 */
const FIND_MS = 40_000;
/**
 * On the road a speed errs for longer at a time (behind each corner), which its deviation does not tell. At 1 a runner
 * who keeps the pace exactly is called twice in a session, at 1.4 at most once; a departure of 3 % is then told after 80 s
 * in the open (`npm run bench -- practice`).
 */
const ROAD_DOUBT = 1.4;
const SEEN_S = 4;
/** Below this share of the asked speed the runner stands at a crossing, and knows it. */
const WALKING = 0.5;
const TIRED = 0.2;
const SILENT_MS = 30_000;
const LAST_MS = 20_000;
const SHELF_LIFE_MS = 20_000;

/** What this stretch of running tells about pace; null where it tells nothing. */
export const evidenceOf = (now: LegNow, going: Going | null, nowMs: number, dtS: number): Evidence | null => {
  const { target, rampS } = now.leg;
  if (target.by !== 'pace' || going === null || going.sinceS > SEEN_S) return null;
  if (nowMs < now.start.atMs + Math.max(FIND_MS, 1000 * rampS)) return null;
  const rate = (target.paceSPerKm / M_PER_KM) * going.speedMps;
  if (rate < WALKING) return null;
  return {
    dtS,
    rate,
    speedSdMps: going.speedSdMps * (going.by === 'pod' ? 1 : ROAD_DOUBT),
    paceSPerKm: target.paceSPerKm,
    quickIsFine: 0,
    slowIsFine: 0,
  };
};

/** The side on which a departure is found that may be spoken of now. */
export const departed = (
  { quick, slow, told }: Departure,
  now: LegNow,
  going: Going | null,
  nowMs: number,
  saidMs: number,
): 'quick' | 'slow' | null => {
  const side = quick.found ? 'quick' : slow.found ? 'slow' : null;
  if (side === null) return null;
  const isWorse = side === 'quick' ? told > 0 : told < 0;
  if (nowMs < saidMs + SILENT_MS && !isWorse) return null;
  if (side === 'slow' && slow.mean > TIRED) return null;
  return legEndMs(now, going, nowMs) < nowMs + LAST_MS ? null : side;
};

/** How well a speed of one moment is known is another thing than for how long it errs. */
const withoutDoubt = (evidence: Evidence, going: Going | null): Evidence =>
  going === null ? evidence : { ...evidence, speedSdMps: going.speedSdMps };

interface PaceDraft {
  readonly departure: Departure;
  readonly side: 'quick' | 'slow';
  readonly evidence: Evidence;
  readonly going: Going | null;
  readonly unit: DistanceUnit;
  readonly ahead: { readonly aheadS: number; readonly sdS: number } | null;
  readonly nowMs: number;
}

export const paceCue = ({ departure, side, evidence, going, unit, ahead, nowMs }: PaceDraft): Cue => {
  const size = sizeOf(side, withoutDoubt(evidence, going));
  const kmPerUnit = metresPer(unit) / M_PER_KM;
  const kind = side === 'quick' ? 'ease' : 'quicken';
  return cueOf({
    topic: kind,
    saying: {
      kind,
      byS: byFor(size.sPerKm * kmPerUnit, size.sdSPerKm * kmPerUnit),
      unit,
      ahead: aheadFor(ahead?.aheadS ?? 0, ahead?.sdS ?? 1),
    },
    importance: IMPORTANCE.pace,
    manner: 'routine',
    dueMs: nowMs,
    lastsMs: SHELF_LIFE_MS,
    ahead,
    why: paceReason(side, { forS: departure[side].forS, mean: size.sPerKm / evidence.paceSPerKm }),
  });
};
