import { type ReadonlySignal, signal } from '@preact/signals';
import type { Voice } from '../../core/cues/voicePort.ts';
import type { CivilDate } from '../../core/prepare/day/civil.ts';
import type { RaceDayItem } from '../../core/prepare/day/raceDay.ts';
import { timeOfDayText } from '../../core/prepare/format.ts';
import { t } from '../../languages/text.ts';
import type { Ear } from '../../voice/device/ear.ts';
import type { PageTime } from '../../voice/device/pageTime.ts';
import type { DaySheet } from './prepareDay.ts';

/** The steps of race day said aloud by an open page. */
export interface Reminders {
  readonly state: ReadonlySignal<'off' | 'waiting'>;
  /** What was said last, as it was said. */
  readonly said: ReadonlySignal<string>;
  /** What comes next, in words; null where nothing does. */
  readonly next: ReadonlySignal<string | null>;
  /** To be called in a touch: the sound wants one. */
  readonly begin: () => Promise<void>;
  readonly end: () => void;
  /** Says all steps after each other. */
  readonly rehearse: () => Promise<void>;
}

export interface ReminderParts {
  readonly day: ReadonlySignal<DaySheet>;
  readonly ear: Ear;
  readonly wake: () => Promise<boolean>;
  readonly voice: Voice;
  readonly time: PageTime;
  /** Epoch milliseconds. */
  readonly wallMs: () => number;
}

const LOOK_MS = 1000;
/** A step is still said this long after its time: a page may have slept. Later it would only confuse. */
const STILL_TRUE_MS = 5 * 60_000;
/** Between two steps of the rehearsal. */
const PAUSE_MS = 700;

/** A step's moment by the clocks of where the phone is: set as a time of day, for in spring and autumn a night has no 24 hours. */
const momentMs = (date: CivilDate, item: RaceDayItem): number =>
  new Date(date.year, date.month - 1, date.day, 0, item.clockMin).getTime();

export const createReminders = (parts: ReminderParts): Reminders => {
  const state = signal<'off' | 'waiting'>('off');
  const said = signal('');
  const next = signal<string | null>(null);
  let lookedMs = 0;
  let stop = (): void => undefined;

  const say = (item: RaceDayItem, atPageMs: number): number => {
    const utterance = parts.voice.utter({ kind: 'reminder', what: item.kind }, 'long');
    parts.ear.say(utterance, atPageMs, atPageMs + STILL_TRUE_MS);
    return atPageMs + utterance.durationS * 1000;
  };

  const look = (): void => {
    const { date, items } = parts.day.value;
    const nowMs = parts.wallMs();
    if (date === null) return;
    let atPageMs = parts.time.nowMs();
    for (const item of items) {
      const dueMs = momentMs(date, item);
      if (dueMs <= lookedMs || dueMs > nowMs || nowMs - dueMs > STILL_TRUE_MS) continue;
      atPageMs = say(item, atPageMs) + PAUSE_MS;
      said.value = t('{time}: {what}. {reason}', {
        time: timeOfDayText(item.clockMin),
        what: item.title,
        reason: item.reason,
      });
    }
    lookedMs = nowMs;
    const coming = items.find((item) => momentMs(date, item) > nowMs);
    next.value = coming
      ? t('{what} at {time}', { what: coming.title, time: timeOfDayText(coming.clockMin) })
      : null;
  };

  const end = (): void => {
    stop();
    stop = () => undefined;
    state.value = 'off';
    next.value = null;
  };

  return {
    state,
    said,
    next,
    begin: async () => {
      await parts.wake();
      end();
      lookedMs = parts.wallMs();
      state.value = 'waiting';
      stop = parts.time.every(LOOK_MS, look);
      look();
    },
    end,
    rehearse: async () => {
      await parts.wake();
      let atMs = parts.time.nowMs();
      for (const item of parts.day.value.items) atMs = say(item, atMs) + PAUSE_MS;
      said.value = t('All steps, one after the other.');
    },
  };
};
