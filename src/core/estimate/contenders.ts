import type { CourseLine } from '../course/line.ts';
import { eastAtM, northAtM } from '../course/line.ts';
import * as course from './courseState.ts';
import type { CourseTrack } from './courseTracker.ts';
import { takeFix } from './courseTracker.ts';
import { hillsAlong } from './hills.ts';
import { copyOf } from './kalman.ts';
import type { PlaneFix } from './planeFix.ts';

/**
 * Where one track is not safe (the line may be recorded backwards; after a long disagreement the runner may be further
 * on, or on the other leg of an out-and-back), several contend, and the fixes decide between them.
 */
export interface Contender {
  readonly line: CourseLine;
  readonly reversed: boolean;
  readonly track: CourseTrack;
  /** Sum of the fits of late, fading; only differences between contenders mean anything. */
  readonly score: number;
  /** Log of how likely the place was when it was found, before any fit; absent: as likely as any. It does not fade. */
  readonly odds?: number;
  /** The line is in its own metres, not in the official ones (lineMetres.ts); absent: it is scaled. */
  readonly ownMetres?: OwnMetres;
}

export interface OwnMetres {
  /** How far the distance may be off by it, a share of the way, one standard deviation. */
  readonly doubtShare: number;
  /** The official distance: the line itself may end before it or behind it. */
  readonly finishM: number;
}

/** What was seen longer ago than this says little about which contender is right now. */
const SCORE_TAU_S = 120;
/** Score differences are of fits that are correlated in time: they count for less than they look. */
const SCORE_TEMPER = 0.25;
/** A contender this far behind (e⁻¹² to one) is out. */
const OUT_BY = 12;
const MOST = 6;

/**
 * The line as it was given is the better guess: turned round it must be better by this much, which on an out-and-back,
 * where both directions are the same road, it never is.
 */
const REVERSED_BEHIND = 8;
export const standing = (c: Contender): number =>
  c.score + (c.odds ?? 0) - (c.reversed ? REVERSED_BEHIND : 0);

export const leaderOf = (contenders: readonly Contender[]): Contender =>
  contenders.reduce((best, c) => (standing(c) > standing(best) ? c : best));

/** Where the line leaves the way out, places say nothing of the way run; speeds still do. */
const inGap = ({ line, track, ownMetres }: Contender, fix: PlaneFix): PlaneFix => {
  if (ownMetres && course.placeOf(track.g) >= line.officialM) return { ...fix, placeless: true };
  if (line.gaps.length === 0) return fix;
  const here = course.distanceOf(track.g);
  const gap = line.gaps.find(({ fromM, toM }) => here >= fromM && here < toM);
  return gap ? { ...fix, placeless: true } : fix;
};

export const takeFixAll = (
  contenders: readonly Contender[],
  fix: PlaneFix,
): { readonly contenders: readonly Contender[]; readonly used: boolean } => {
  const next = contenders.map((c) => {
    const fade = Math.exp(-Math.max(0, fix.timeMs - c.track.timeMs) / 1000 / SCORE_TAU_S);
    const { track, used } = takeFix(c.line, c.track, inGap(c, fix));
    return { contender: { ...c, track, score: c.score * fade + SCORE_TEMPER * track.fit }, used };
  });
  const best = Math.max(...next.map((n) => standing(n.contender)));
  const kept = next.filter((n) => standing(n.contender) > best - OUT_BY);
  const leader = leaderOf(kept.map((n) => n.contender));
  return {
    contenders: kept.map((n) => n.contender),
    used: next.find((n) => n.contender === leader)?.used ?? false,
  };
};

/** How far from the line a fix may fall and still be of that place. */
const ASIDE_MAX_M = 50;
const ASIDE_SD_M = 15;
/** The runner may have gone this much faster than believed while nothing was seen. */
const SPEED_DOUBT = 0.35;
const SPARE_M = 40;
const STEP_M = 5;
const NEWCOMER_SD_M = 12;
/** Nearer than this the leader finds there by itself; bursts of the receiver are 10 to 40 m. */
const ELSEWHERE_M = 80;
/** A newcomer must earn its place: it starts this far behind the leader. */
const NEWCOMER_BEHIND = 3;
/** Most runners hold their pace in the dark to about this share; few do not, and then anything may be (logs of chances). */
const HELD_SHARE = 0.04;
const NOT_HELD = -3;
const ANYWHERE = -5;
/** Where the runner is found as expected, places that take a wonder are not looked at. */
const EXPECTED = -1.5;
const WONDER = -4.5;

/** Log of how likely the runner is so far from where they were believed, against where they were believed. */
const oddsAt = (offM: number, sdM: number, unseenM: number): number => {
  const heldM = SPARE_M + HELD_SHARE * unseenM;
  const held = -((offM / heldM) ** 2) / 2;
  const notHeld = NOT_HELD - Math.log(Math.max(1, sdM / heldM)) - (offM / Math.max(sdM, heldM)) ** 2 / 2;
  return Math.max(held, notHeld, ANYWHERE);
};

export const cornersBefore = (line: CourseLine, alongM: number): number =>
  line.corners.filter((c) => c.alongM <= alongM).length;

/**
 * New contenders at the places along the line, within reach of the leader's belief, where the fix lies close to it; and
 * along the line the other way round, which may part from this one only now: the stick of a lollipop is run both ways.
 * @param unseenS for how long nothing has fitted
 */
export const newcomers = (
  leader: Contender,
  otherWay: CourseLine | null,
  fix: PlaneFix,
  unseenS: number,
): readonly Contender[] => [
  ...newcomersOn(leader.line, leader.reversed, leader, fix, unseenS),
  ...(otherWay && !leader.reversed ? newcomersOn(otherWay, true, leader, fix, unseenS) : []),
];

/** Out and back is the same road both ways: there the other line is no other. */
const isAnotherWay = (a: CourseLine, b: CourseLine, s: number): boolean =>
  Math.hypot(eastAtM(a, s) - eastAtM(b, s), northAtM(a, s) - northAtM(b, s)) > ASIDE_MAX_M;

/** Places along a line, between two, that lie nearer to a fix than those on either side of them. */
const nearPlaces = (line: CourseLine, fix: PlaneFix, from: number, to: number): Found[] => {
  const asideAt = (s: number): number =>
    Math.hypot(fix.eastM - eastAtM(line, s), fix.northM - northAtM(line, s));
  const found: Found[] = [];
  let before = Number.POSITIVE_INFINITY;
  let aside = asideAt(from);
  for (let s = from; s <= to; s += STEP_M) {
    const after = asideAt(s + STEP_M);
    if (aside < ASIDE_MAX_M && aside <= before && aside < after) found.push({ s, aside });
    before = aside;
    aside = after;
  }
  return found;
};

interface Found {
  readonly s: number;
  readonly aside: number;
}

const newcomersOn = (
  line: CourseLine,
  reversed: boolean,
  leader: Contender,
  fix: PlaneFix,
  unseenS: number,
): readonly Contender[] => {
  const { g, hills } = leader.track;
  const here = course.placeOf(g);
  const sdM = Math.sqrt(course.distanceVarOf(g));
  const unseenM = Math.max(1.5, course.speedOf(g, hills)) * unseenS;
  // Who was not seen may have stood all the time; they have not run twice as fast.
  const spareM = SPARE_M + 3 * sdM;
  const from = Math.max(0, here - spareM - unseenM);
  const to = Math.min(line.officialM, here + spareM + SPEED_DOUBT * unseenM);
  const isElsewhere = ({ s }: Found): boolean =>
    line === leader.line ? Math.abs(s - here) > ELSEWHERE_M : isAnotherWay(leader.line, line, s);
  const places = nearPlaces(line, fix, from, to)
    .filter(isElsewhere)
    .map(({ s, aside }) => ({ s, odds: oddsAt(s - here, sdM, unseenM), aside2: (aside / ASIDE_SD_M) ** 2 }))
    .sort((a, b) => a.aside2 / 2 - a.odds - (b.aside2 / 2 - b.odds));
  const isExpected = places.some((p) => p.odds > EXPECTED);
  return places
    .filter((p) => !isExpected || p.odds > WONDER)
    .slice(0, MOST / 2)
    .map(({ s, odds }) => {
      const moved = copyOf(g);
      if (leader.track.untied) course.lineAt(moved, s, NEWCOMER_SD_M);
      else course.placeAt(moved, s, NEWCOMER_SD_M);
      return {
        line,
        reversed,
        track: {
          ...leader.track,
          g: moved,
          hills: line === leader.line ? hills : hillsAlong(line),
          passed: cornersBefore(line, s),
          firstRefused: null,
        },
        score: leader.score - NEWCOMER_BEHIND,
        ...(leader.ownMetres && line === leader.line ? { ownMetres: leader.ownMetres } : {}),
        odds: odds + (leader.odds ?? 0),
      };
    });
};
