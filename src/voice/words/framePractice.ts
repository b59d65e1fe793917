import type { Length, PracticeSaying } from '../../core/cues/practiceSaying.ts';
import type { Form } from '../../core/cues/voicePort.ts';
import { saidMetres, tenthsOf } from './frameParts.ts';
import type { Tongue } from './tongue.ts';
import type { Sentence } from './words.ts';

/** Below it metres, from here on tenths of the unit. */
const SHORTER_THAN_UNIT_M = 975;
const LEAST_M = 50;

type Of<K extends PracticeSaying['kind']> = PracticeSaying & { kind: K };

const lengthOf = (tongue: Tongue, length: Length): Sentence => {
  if ('timeS' in length) return tongue.time(length.timeS);
  return length.distanceM < SHORTER_THAN_UNIT_M
    ? tongue.metres(saidMetres(Math.max(LEAST_M, length.distanceM)))
    : tongue.length(tenthsOf(length.distanceM, length.unit), length.unit);
};

const digits = (tongue: Tongue, n: number): Sentence =>
  [...String(n)].flatMap((digit) => tongue.number(Number(digit)));

const leg = (tongue: Tongue, { what, rep, length, target }: Of<'leg'>, form: Form): readonly Sentence[] => {
  const { phrases } = tongue;
  const name =
    rep === null
      ? [tongue.legs[what]]
      : [phrases.rep, ...tongue.number(rep.count), phrases.of, ...tongue.number(rep.of)];
  const extent = length === 'press' ? [phrases.untilPress] : lengthOf(tongue, length);
  if (target === null) return [name, extent];
  const asked =
    typeof target === 'string' ? [tongue.efforts[target]] : tongue.pace(target.sPerUnit, target.unit);
  // In a hurry, what to do: the target where there is one, else how long.
  return form === 'short' ? [name, asked] : [name, extent, asked];
};

/** The calls of a practice session. */
export const practiceWords = (tongue: Tongue, saying: PracticeSaying, form: Form): readonly Sentence[] => {
  const { phrases } = tongue;
  const withDrift = (ahead: Of<'rep'>['ahead']): readonly Sentence[] =>
    ahead === null || form === 'short' ? [] : [tongue.drift(ahead)];
  switch (saying.kind) {
    case 'leg':
      return leg(tongue, saying, form);
    case 'rep': {
      const { count, pace, ahead } = saying;
      return [
        count === null ? [phrases.legDone] : [phrases.rep, ...tongue.number(count)],
        ...(pace === null ? [] : [tongue.pace(pace.sPerUnit, pace.unit)]),
        ...withDrift(ahead),
      ];
    }
    case 'remaining': {
      const { left, ahead } = saying;
      if (left === 'half') return [[phrases.halfOfLeg], ...withDrift(ahead)];
      if (left === 'press') return [[phrases.untilPress], ...withDrift(ahead)];
      return [[phrases.left, ...lengthOf(tongue, left)], ...withDrift(ahead)];
    }
    case 'heart': {
      const now = [phrases.heartRate, ...digits(tongue, saying.bpm)];
      if (form === 'short') return [now];
      return [[phrases.tooHard], now, [phrases.ceiling, ...digits(tongue, saying.mostBpm)]];
    }
    case 'pen':
      return saying.inMin <= 0
        ? [[phrases.penNow]]
        : [[phrases.penClosesIn, ...tongue.minutes(saying.inMin)]];
    case 'done': {
      if (form === 'short') return [[phrases.sessionDone]];
      const { timeS, distance } = saying;
      return [
        [phrases.sessionDone],
        tongue.time(timeS),
        ...(distance === null ? [] : [tongue.length(distance.tenths, distance.unit)]),
      ];
    }
  }
};
