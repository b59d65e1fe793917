import type { Call } from '../core/cues/call.ts';
import type { RacePlan } from '../core/plan/racePlan.ts';
import { metresPer, pacePer } from '../core/units/units.ts';
import { callsOf, talkS } from './jsonLines.ts';
import type { Rehearsal } from './rehearse.ts';

/** 6240 → 1:44:00; tenths where asked for. */
export const clock = (seconds: number, tenths = false): string => {
  const unit = tenths ? 10 : 1;
  const whole = Math.round(Math.abs(seconds) * unit);
  const s = whole / unit;
  const two = (n: number): string => String(Math.floor(n)).padStart(2, '0');
  const rest = tenths ? (s % 60).toFixed(1).padStart(4, '0') : two(s % 60);
  return `${seconds < 0 && whole > 0 ? '-' : ''}${Math.floor(s / 3600)}:${two((s / 60) % 60)}:${rest}`;
};

const distance = (m: number, plan: RacePlan): string => (m / metresPer(plan.unit)).toFixed(2);

const drift = (aheadS: number | null, sdS: number | null): string => {
  if (aheadS === null) return '';
  const sign = aheadS < 0 ? '-' : '+';
  return `${sign}${Math.abs(aheadS).toFixed(1)}${sdS === null ? '' : ` ±${(1.96 * sdS).toFixed(1)}`}`;
};

const paceWords = (plan: RacePlan): string => {
  const s = Math.round(pacePer(plan.unit, (plan.goalS / plan.distanceM) * 1000));
  return `${Math.floor(s / 60)}:${String(s % 60).padStart(2, '0')} per ${plan.unit}`;
};

const byHowMuch = (quickerSPerKm: number): string =>
  `${Math.abs(quickerSPerKm)} s/km ${quickerSPerKm < 0 ? 'slower' : 'quicker'}`;

/** A name out of a file, as one line of a page: no line breaks, no signs that a terminal would obey. */
export const onOneLine = (name: string): string => name.replace(/[\s\p{Cc}\p{Cf}]+/gu, ' ').trim();

const header = (plan: RacePlan): string[] => {
  const legs = [
    plan.opening &&
      `${byHowMuch(plan.opening.quickerSPerKm)} to ${distance(plan.opening.untilM, plan)} ${plan.unit}`,
    plan.push && `${byHowMuch(plan.push.quickerSPerKm)} from ${distance(plan.push.fromM, plan)} ${plan.unit}`,
  ].filter((leg) => leg !== null);
  return [
    onOneLine(plan.name),
    `${distance(plan.distanceM, plan)} ${plan.unit} in ${clock(plan.goalS)}, ${paceWords(plan)}${legs.map((l) => `; ${l}`).join('')}`,
  ];
};

const row = (call: Call, zeroMs: number, plan: RacePlan): string => {
  const ownS = (ms: number): string => clock((ms - zeroMs) / 1000, true);
  const cells = [
    ownS(call.startMs).padStart(10),
    ownS(call.endMs).padStart(10),
    (call.distanceM === null ? '' : distance(call.distanceM, plan)).padStart(6),
    drift(call.aheadS, call.aheadSdS).padStart(12),
    call.saying.kind.padEnd(10),
    call.utterance.text === '' ? '(tone)' : call.utterance.text,
  ];
  return cells.join('  ');
};

const footer = (rehearsal: Rehearsal, skipped: number): string[] => {
  const lastS = rehearsal.finishS;
  const calls = callsOf(rehearsal);
  const talk = talkS(calls);
  const share = lastS === null ? '' : `, ${((100 * talk) / lastS).toFixed(1)} % of the run`;
  const run =
    lastS === null ? `did not come to the line, ${rehearsal.distanceM.toFixed(0)} m` : clock(lastS, true);
  return [
    `finish: ${run}`,
    `calls: ${calls.length}, ${talk.toFixed(1)} s of sound${share}`,
    `fixes: ${rehearsal.fixes}${skipped + rehearsal.unused > 0 ? `, ${skipped + rehearsal.unused} left out` : ''}`,
  ];
};

/** A page that one can read: each call with its begin and end on the own clock, place, drift (95 %), kind and words. */
export const callSheet = (
  rehearsal: Rehearsal,
  plan: RacePlan,
  skipped: number,
  notes: readonly string[],
): string => {
  const rows = callsOf(rehearsal).map((call) => row(call, rehearsal.zeroMs, plan));
  const title = ['sound from', 'to', plan.unit, 'ahead ±95 %', 'kind', 'words'];
  const widths = [10, 10, 6, 12, -10, 0];
  const titleRow = title.map((t, i) => {
    const w = widths[i] ?? 0;
    return w < 0 ? t.padEnd(-w) : t.padStart(w);
  });
  return `${[
    ...header(plan),
    ...notes,
    '',
    titleRow.join('  '),
    ...rows,
    '',
    ...footer(rehearsal, skipped),
  ].join('\n')}\n`;
};
