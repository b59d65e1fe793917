import { LOOK_AHEAD_MS } from '../cues/scheduler.ts';
import { beginDeparture, follow, newTarget, rest, tell } from '../drift/departure.ts';
import { expectNewPace } from '../estimate/newPace.ts';
import { COUNTDOWN_MS, doneCue, legCue, repCue, takeCue } from './cues.ts';
import { type Draft, letSpeak, offerTo } from './draft.ts';
import { aheadFrom, type Going, type Mark, wayFrom } from './going.ts';
import { SETTLE_MS, underCeiling } from './heart.ts';
import { beginLeg, type LegNow, legEndMs, resultOf } from './legNow.ts';
import { heartCue, lookAtPen, lookAtSignal, mustEndMs } from './notices.ts';
import { departed, evidenceOf, paceCue } from './pace.ts';
import { goingOf } from './practice.ts';
import { halfCue, halfDue, lastCue, lastDue } from './remaining.ts';
import { beginLegOn } from './way/way.ts';

/** What is said of a leg dies with it. */
const OF_THE_LEG = ['ease', 'quicken', 'remaining', 'heart'];

/** Where the runner was at an instant a little before now. */
const backAt = (going: Going | null, atMs: number, nowMs: number): Mark => ({
  atMs,
  going: going && {
    ...going,
    distanceM: going.distanceM - (going.speedMps * (nowMs - atMs)) / 1000,
  },
});

/** What measures the way was first heard after the leg had begun: it counts from there, or from the begin if that is near. */
const HEARD_LATE_MS = 10_000;
const findWay = (draft: Draft, now: LegNow, nowMs: number): void => {
  const fromMs = Math.max(now.start.atMs, nowMs - HEARD_LATE_MS);
  const { going } = backAt(goingOf(draft, nowMs), fromMs, nowMs);
  const paced = now.paced === now.start ? { ...now.start, going } : now.paced;
  draft.leg = { ...now, start: { ...now.start, going }, paced };
  draft.startGoing ??= going;
};

/** From one leg to the next, or to the end. */
export const change = (draft: Draft, now: LegNow, changeMs: number, nowMs: number): void => {
  const { plan } = draft.config;
  const mark = backAt(goingOf(draft, nowMs), changeMs, nowMs);
  const result = resultOf(now, mark.going, changeMs);
  draft.results = [...draft.results, result];
  draft.leg = beginLeg(plan.legs, now.index + 1, mark, now.mustEndMs);
  if (draft.leg === null) draft.endMs = changeMs;
  draft.departure = newTarget(draft.departure);
  draft.way = draft.way && beginLegOn(draft.way, draft.setup, draft.estimate);
  draft.estimate = expectNewPace(draft.estimate);
  const waiting = draft.speech.waiting.filter((cue) => !OF_THE_LEG.includes(cue.topic));
  draft.speech = { ...draft.speech, waiting };
  offerTo(draft, repCue(result, plan.unit), nowMs);
};

/** Says what comes at the end of the leg: the next one, or that the session is done. */
export const announce = (draft: Draft, now: LegNow, changeMs: number, counted: boolean): void => {
  const { plan } = draft.config;
  const isLast = now.mustEndMs !== null && changeMs >= now.mustEndMs;
  const next = isLast ? undefined : plan.legs[now.index + 1];
  draft.leg = { ...now, changeMs };
  if (next !== undefined) offerTo(draft, legCue(next, plan.unit, changeMs, counted), draft.atMs);
  else {
    const going = goingOf(draft, draft.atMs);
    const way = wayFrom({ atMs: 0, going: draft.startGoing }, going);
    const timeS = (changeMs - (draft.startMs ?? changeMs)) / 1000;
    offerTo(draft, doneCue(plan.unit, changeMs, counted, timeS, way?.distanceM ?? null), draft.atMs);
  }
};

const lookAtPace = (draft: Draft, now: LegNow, going: Going | null, nowMs: number, dtS: number): void => {
  const evidence = evidenceOf(now, going, nowMs, dtS);
  if (evidence === null) {
    if (going === null || going.sinceS > 10) draft.departure = rest(draft.departure);
    return;
  }
  draft.departure = follow(draft.departure, evidence);
  const side = departed(draft.departure, now, going, nowMs, draft.paceSaidMs);
  if (side === null || now.changeMs !== null) return;
  const ahead = aheadFrom(now.leg, now.paced, going, nowMs);
  const { unit } = draft.config.plan;
  offerTo(draft, paceCue({ departure: draft.departure, side, evidence, going, unit, ahead, nowMs }), nowMs);
  draft.departure = tell(draft.departure, side);
};

const lookAtRemaining = (draft: Draft, now: LegNow, going: Going | null, nowMs: number): void => {
  if (now.changeMs !== null) return;
  const ahead = aheadFrom(now.leg, now.paced, going, nowMs);
  const half = now.halfSaid ? null : halfDue(now, going, nowMs);
  if (half !== null) {
    draft.leg = { ...(draft.leg ?? now), halfSaid: true };
    offerTo(draft, halfCue(half, ahead), nowMs);
  }
  const last = now.lastSaid ? null : lastDue(now, going, nowMs);
  if (last !== null) {
    draft.leg = { ...(draft.leg ?? now), lastSaid: true };
    offerTo(draft, lastCue(last, ahead), nowMs);
  }
};

const lookAtTaking = (draft: Draft, now: LegNow, going: Going | null, nowMs: number): void => {
  const taking = now.leg.take[now.taken];
  if (taking === undefined) return;
  const due =
    'timeS' in taking.at
      ? nowMs - now.start.atMs >= 1000 * taking.at.timeS
      : (wayFrom(now.start, going)?.distanceM ?? 0) >= taking.at.distanceM;
  if (!due) return;
  draft.leg = { ...(draft.leg ?? now), taken: now.taken + 1 };
  offerTo(draft, takeCue(taking, nowMs), nowMs);
};

const lookAtHeart = (draft: Draft, now: LegNow, nowMs: number): void => {
  const settled = nowMs - now.start.atMs >= SETTLE_MS;
  const { heart, over } = underCeiling(draft.heart, settled ? now.leg.heartMostBpm : null, nowMs);
  draft.heart = heart;
  if (over && now.leg.heartMostBpm !== null && heart.bpm !== null)
    offerTo(draft, heartCue(heart.bpm, now.leg.heartMostBpm, nowMs), nowMs);
};

/** One instant of the grid, `dtS` after the one before. */
export const look = (draft: Draft, nowMs: number, dtS: number): void => {
  // A grid of half a second may hold the end of one leg and, after a gap, of more.
  for (let now = draft.leg; now?.changeMs != null && now.changeMs <= nowMs; now = draft.leg)
    change(draft, now, now.changeMs, nowMs);
  const going = goingOf(draft, nowMs);
  if (draft.leg !== null && draft.leg.start.going === null && going !== null)
    findWay(draft, draft.leg, nowMs);
  const now = draft.leg;
  if (now === null) {
    // Who is done early still has a pen to reach.
    if (draft.startMs !== null) lookAtPen(draft, nowMs);
    letSpeak(draft, nowMs);
    return;
  }
  const paced =
    now.paced === null && nowMs >= now.start.atMs + 1000 * now.leg.rampS ? { atMs: nowMs, going } : now.paced;
  if (paced !== now.paced) draft.leg = { ...now, paced };
  lookAtPace(draft, draft.leg ?? now, going, nowMs, dtS);
  lookAtRemaining(draft, draft.leg ?? now, going, nowMs);
  lookAtTaking(draft, draft.leg ?? now, going, nowMs);
  lookAtHeart(draft, draft.leg ?? now, nowMs);
  lookAtSignal(draft, going, nowMs);
  lookAtPen(draft, nowMs);
  const endMs = legEndMs(draft.leg ?? now, going, nowMs);
  if (now.changeMs === null && endMs - COUNTDOWN_MS <= nowMs + LOOK_AHEAD_MS)
    announce(draft, draft.leg ?? now, Math.max(endMs, nowMs), endMs >= nowMs);
  letSpeak(draft, nowMs);
};

/** The session begins. */
export const begin = (draft: Draft, startMs: number, nowMs: number): void => {
  const { plan } = draft.config;
  const mark = backAt(goingOf(draft, nowMs), startMs, nowMs);
  draft.startMs = startMs;
  draft.startGoing = mark.going;
  draft.leg = beginLeg(plan.legs, 0, mark, mustEndMs(plan.penClosesMs, startMs));
  draft.departure = beginDeparture;
  if (draft.leg) offerTo(draft, legCue(draft.leg.leg, plan.unit, nowMs, false), nowMs);
};
