import type { Effort, Leg, LegKind } from '../plan/practicePlan.ts';
import { type Message, message } from '../units/message.ts';

/** What legs and efforts are called on a screen. */
export const LEG_NAMES: Readonly<Record<LegKind, Message>> = {
  'warm-up': message('warm-up'),
  work: message('work||leg of a session'),
  recovery: message('recovery||leg of a session'),
  easy: message('easy||leg of a session'),
  stride: message('stride||short quick run'),
  opening: message('opening||of a race'),
  'goal pace': message('goal pace'),
  'cool-down': message('cool-down'),
};

export const EFFORT_NAMES: Readonly<Record<Effort, Message>> = {
  easy: message('easy||effort'),
  steady: message('steady||effort'),
  'comfortably hard': message('comfortably hard'),
  hard: message('hard||effort'),
  'quick and loose': message('quick and loose'),
};

/** The leg's name, numbered where it is repeated. */
export const legName = ({ kind, rep }: Pick<Leg, 'kind' | 'rep'>): Message =>
  rep === null
    ? LEG_NAMES[kind]
    : message('{leg} {count} of {of}', { leg: LEG_NAMES[kind], count: rep.count, of: rep.of });
