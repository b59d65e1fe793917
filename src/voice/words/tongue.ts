import type { NoticeName } from '../../core/cues/notice.ts';
import type { Ahead } from '../../core/cues/saying.ts';
import type { MorningStep } from '../../core/plan/morning.ts';
import type { Advice } from '../../core/plan/pacerAdvice.ts';
import type { Effort, LegKind } from '../../core/plan/practicePlan.ts';
import type { Item, Offer } from '../../core/plan/supplies.ts';
import type { DistanceUnit } from '../../core/units/units.ts';
import type { Sentence } from './words.ts';

/** Sentences and beginnings of sentences that hold no number; each is one clip. */
export interface Phrases {
  readonly clockRunning: string;
  /** Before the goal's time. */
  readonly goal: string;
  /** Before a pace. */
  readonly hold: string;
  readonly opening: string;
  readonly tooQuick: string;
  /** Before a pace. */
  readonly settleAt: string;
  readonly noBoard: string;
  /** Before the time of one kilometre or mile. */
  readonly split: string;
  /** Between a place and the time that it was reached in. */
  readonly reachedIn: string;
  readonly halfway: string;
  readonly soon: string;
  readonly now: string;
  readonly waterFollows: string;
  /** Before a pace. */
  readonly pushTo: string;
  /** Before what is left of the race or of a leg. */
  readonly left: string;
  readonly signalLost: string;
  readonly byPace: string;
  readonly signalBack: string;
  readonly lineReversed: string;
  /** Before a time of arrival. */
  readonly headingFor: string;
  readonly finishedIn: string;
  readonly ownTime: string;
  readonly noPosition: string;
  readonly byClock: string;
  readonly pressAtBoards: string;
  /** Before a place. */
  readonly nowByPlan: string;
  /** Before the time that the pacer is heading for. */
  readonly pacer: string;
  readonly byTheGun: string;
  readonly againstFlag: string;
  readonly onTheirFlag: string;
  readonly noPacer: string;
  readonly toRival: string;
  readonly levelWithRival: string;
  /** Before a repetition's number. */
  readonly rep: string;
  /** Between a repetition's number and how many there are. */
  readonly of: string;
  readonly untilPress: string;
  readonly legDone: string;
  readonly halfOfLeg: string;
  readonly tooHard: string;
  readonly heartRate: string;
  readonly ceiling: string;
  readonly penNow: string;
  /** Before minutes. */
  readonly penClosesIn: string;
  readonly sessionDone: string;
}

/**
 * A language whose sentences go in the order of `wordsOf`. What changes with a number or a gender is a function; numbers
 * are whole and within the ranges of core/cues/saying.ts.
 */
export interface Tongue {
  /** BCP 47 tag. */
  readonly language: string;
  /** 0 to 100, standing by itself. */
  readonly number: (n: number) => Sentence;
  /** Seconds as a time or a split, up to 9:59:59. */
  readonly time: (s: number) => Sentence;
  /** 0 to 99 minutes. */
  readonly minutes: (m: number) => Sentence;
  /** Seconds per unit. */
  readonly pace: (s: number, unit: DistanceUnit) => Sentence;
  /** How long something is, in tenths of the unit. */
  readonly length: (tenths: number, unit: DistanceUnit) => Sentence;
  /** Where something is, in tenths of the unit. */
  readonly place: (tenths: number, unit: DistanceUnit) => Sentence;
  /** Before a place, in a sentence that says how far something goes. */
  readonly until: (unit: DistanceUnit) => string;
  /** 50 to 950 in steps of 50, as a length. */
  readonly metres: (m: number) => Sentence;
  /** The same, as how far away something is. */
  readonly inMetres: (m: number) => Sentence;
  readonly drift: (ahead: Ahead) => Sentence;
  /** Run so many seconds per unit slower, or quicker. */
  readonly change: (what: 'ease' | 'quicken', byS: number, unit: DistanceUnit) => Sentence;
  readonly and: string;
  readonly offers: Readonly<Record<Offer, string>>;
  /** What the runner carries. */
  readonly items: Readonly<Record<Item, string>>;
  readonly advice: Readonly<Record<Advice, string>>;
  readonly reminders: Readonly<Record<MorningStep, string>>;
  /** What happened, and what that means for the runner. */
  readonly notices: Readonly<Record<NoticeName, readonly [happened: string, so: string | null]>>;
  readonly legs: Readonly<Record<LegKind, string>>;
  readonly efforts: Readonly<Record<Effort, string>>;
  readonly phrases: Phrases;
}
