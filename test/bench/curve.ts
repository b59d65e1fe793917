import { beginDeparture, type Evidence, follow, rest, tell } from '../../src/core/drift/departure.ts';
import { scheduleOf } from '../../src/core/plan/schedule.ts';
import type { Raced } from './race.ts';
import type { World } from './worlds.ts';

/**
 * The sequential test alone over what a race showed, at any limit: the races are run once, the curve of delay against
 * false alarms is drawn from what was kept of them. What the rule adds in the engine (core/cues/rules/pace.ts) is done
 * here in short: silence after a word, none near the start and the line.
 */
export interface Shown {
  readonly ownS: number;
  /** Null where nothing was seen. */
  readonly evidence: Evidence | null;
}

/** When a departure was told, and on which side. */
export interface Told {
  readonly ownS: number;
  readonly side: 'quick' | 'slow';
}

const FREE_S = 60;
const SILENT_S = 33;
const SEEN_S = 4;
const LOST_S = 12;
/** Whoever is late may be quicker, whoever has time in hand slower: by what that is worth over the rest. */
const WELCOME_MOST = 0.1;
const NO_EASE_M = 1000;
const NO_QUICKEN_M = 300;

export const shownIn = ({ plan, given }: World, { samples }: Raced): Shown[] => {
  const schedule = scheduleOf(plan, given);
  let lastS = samples[0]?.ownS ?? 0;
  return samples.flatMap(({ ownS, progress, drift }): Shown[] => {
    const dtS = ownS - lastS;
    if (!(dtS > 0)) return [];
    lastS = ownS;
    const restM = plan.distanceM - progress.distanceM;
    if (ownS < FREE_S || restM < NO_QUICKEN_M) return [];
    if (progress.sinceFixS > SEEN_S) return progress.sinceFixS > LOST_S ? [{ ownS, evidence: null }] : [];
    const paceSPerKm = schedule.paceAtSPerKm(progress.distanceM);
    const restS = Math.max(1, plan.goalS - schedule.timeAtS(progress.distanceM));
    const worth = Math.min(WELCOME_MOST, Math.max(0, Math.abs(drift.aheadS) - 2 * drift.aheadSdS) / restS);
    const evidence: Evidence = {
      dtS,
      rate: (paceSPerKm / 1000) * progress.speedMps,
      speedSdMps: progress.speedSdMps,
      paceSPerKm,
      quickIsFine: restM < NO_EASE_M ? WELCOME_MOST : drift.aheadS < 0 ? worth : 0,
      slowIsFine: drift.aheadS > 0 ? worth : 0,
    };
    return [{ ownS, evidence }];
  });
};

/** Everything that is told at a limit. */
export const toldIn = (shown: readonly Shown[], limit: number): Told[] => {
  const told: Told[] = [];
  let departure = beginDeparture;
  let saidS = Number.NEGATIVE_INFINITY;
  for (const { ownS, evidence } of shown) {
    if (evidence === null) {
      departure = rest(departure);
      continue;
    }
    departure = follow(departure, evidence, limit);
    const side = departure.quick.found ? 'quick' : departure.slow.found ? 'slow' : null;
    if (side === null) continue;
    const isWorse = side === 'quick' ? departure.told > 0 : departure.told < 0;
    if (ownS < saidS + SILENT_S && !isWorse) continue;
    departure = tell(departure, side);
    saidS = ownS;
    told.push({ ownS, side });
  }
  return told;
};
