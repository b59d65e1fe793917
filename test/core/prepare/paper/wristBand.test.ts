import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { RacePlan } from '../../../../src/core/plan/racePlan.ts';
import { scheduleOf } from '../../../../src/core/plan/schedule.ts';
import { planRaceDay } from '../../../../src/core/prepare/day/raceDay.ts';
import { durationText } from '../../../../src/core/prepare/format.ts';
import { planRaceSheet as planRaceSheetMessage } from '../../../../src/core/prepare/paper/raceSheet.ts';
import { planWristBand as planWristBandMessage } from '../../../../src/core/prepare/paper/wristBand.ts';
import { inEnglish } from '../../../support/english.ts';
import { bareHalf, fullHalf, HALF_M } from '../plans.ts';
import { HALF_MORNING } from '../raceDays.ts';

const planWristBand = inEnglish(planWristBandMessage);
const planRaceSheet = inEnglish(planRaceSheetMessage);

const schedule = scheduleOf(fullHalf, null);
const bandText = (plan: RacePlan, unit: 'km' | 'mile'): readonly string[] =>
  planWristBand(plan, scheduleOf(plan, null), unit, null).rows.map((r) => {
    const marks = r.marks.map((m) => (m.from === 'fuel' ? `take ${m.what}` : m.what)).join(' ');
    return `${r.bold ? '*' : ' '}${r.label} ${durationText(r.timeS)} ${marks}`.trimEnd();
  });

describe('the wrist band', () => {
  test('of the half by kilometres', () => {
    expect(bandText(fullHalf, 'km')).toEqual([
      ' 1 4:50',
      ' 2 9:43',
      ' 3 14:38',
      ' 4 19:34',
      '*5 24:30 water',
      ' 6 29:26',
      ' 7 34:21',
      ' 8 39:17',
      ' 9 44:13',
      '*10 49:09 water',
      '*half 51:51',
      ' 11 54:04 drink',
      ' 12 59:00',
      ' 13 1:03:56 take gel water',
      ' 14 1:08:52',
      '*15 1:13:48',
      ' 16 1:18:43',
      ' 17 1:23:39 water',
      ' 18 1:28:35',
      ' 19 1:33:27',
      '*20 1:38:19',
      ' 21 1:43:11',
      '*finish 1:43:39',
    ]);
  });

  test('by miles keeps the 5 km mats, in their own unit', () => {
    const rows = bandText(fullHalf, 'mile');
    expect(rows.slice(2, 5)).toEqual([' 3 23:39 water', '*5 km 24:30', ' 4 31:35']);
    expect(rows).toHaveLength(13 + 5 + 1);
  });

  test('a second goal stands beside', () => {
    const dream = scheduleOf({ ...bareHalf, goalS: 6000 }, null);
    const band = planWristBand(fullHalf, schedule, 'km', dream);
    expect(band.rows.at(-1)).toMatchObject({ label: 'finish', otherTimeS: 6000 });
  });

  const anyPlan = fc
    .record({
      distanceM: fc.double({ min: 1500, max: 60_000, noNaN: true }),
      paceSPerKm: fc.double({ min: 170, max: 600, noNaN: true }),
      parts: fc.array(fc.double({ min: 0.01, max: 1, noNaN: true }), { maxLength: 8 }),
      waters: fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 12 }),
    })
    .map(
      ({ distanceM, paceSPerKm, parts, waters }): RacePlan => ({
        ...bareHalf,
        distanceM,
        goalS: (paceSPerKm * distanceM) / 1000,
        checkpointsM: [...new Set(parts)].sort((a, b) => a - b).map((p) => p * distanceM),
        stations: waters.map((p) => ({ atM: p * distanceM, offers: ['water'] })),
      }),
    );

  test('laws: rows ascend, end at the finish, printed splits add up, every mark stands once', () => {
    void fc.assert(
      fc.property(anyPlan, fc.constantFrom('km' as const, 'mile' as const), (plan, unit) => {
        const { rows } = planWristBand(plan, scheduleOf(plan, null), unit, null);
        for (const [i, row] of rows.entries())
          if (i > 0) expect(row.atM).toBeGreaterThan(rows[i - 1]?.atM ?? 0);
        expect(rows.at(-1)).toMatchObject({ kind: 'finish', atM: plan.distanceM, bold: true });
        expect(rows.filter((r) => r.kind === 'finish')).toHaveLength(1);
        expect(rows.reduce((sum, r) => sum + r.splitS, 0)).toBe(Math.round(rows.at(-1)?.timeS ?? 0));
        expect(rows.at(-1)?.timeS).toBeCloseTo(plan.goalS, 6);
        expect(rows.flatMap((r) => r.marks)).toHaveLength(plan.stations.length);
      }),
    );
  });
});

describe('the race sheet', () => {
  const day = planRaceDay(HALF_MORNING);
  const sheet = planRaceSheet({ ...fullHalf, pacing: 'effort' }, schedule, 'km', day);

  test('says the plan in sentences', () => {
    expect(sheet.title).toBe('Harbour half');
    expect(sheet.facts.map((f) => `${f.label}: ${f.text}`)).toEqual([
      'Race: half marathon',
      'Goal: 1:44:00 by your own clock',
      'Goal pace: 4:56 per km, 7:56 per mile',
      'The plan finishes in: 1:43:39',
    ]);
    expect(sheet.legs).toEqual([
      'Opening: to 1.5 km at 4:50 per km, 6 s per km quicker than goal pace. No more than that.',
      'Then settle: 4:56 per km to 18.1 km.',
      'Push: from 18.1 km at 4:52 per km, if the legs allow it.',
      'On hills keep the effort, not the pace; the times at the checkpoints know the hills.',
    ]);
  });

  test('checkpoints in both units, supplies in the order of the course', () => {
    expect(sheet.checkpoints[0]).toEqual({
      place: '5 km',
      time: '24:30',
      perKm: '4:54 per km',
      perMile: '7:53 per mile',
    });
    expect(sheet.checkpoints.at(-1)?.place).toBe('finish');
    expect(sheet.supplies.map((s) => `${s.place} ${s.text}`)).toEqual([
      '4.7 km water: A sip or two if you are thirsty; else run on.',
      '9.6 km water: A sip or two if you are thirsty; else run on.',
      '12.2 km gel',
      '12.3 km water: Two or three sips after the gel.',
      '17 km water: A sip or two if you are thirsty; else run on.',
    ]);
  });

  test('carries the day and the cautions', () => {
    expect(sheet.day[0]).toMatchObject({ time: '06:30', what: 'Get up' });
    expect(sheet.cautions.join()).toContain('Chest pain');
    expect(sheet.cautions.join()).toContain('Gels can upset');
    expect(planRaceSheet(bareHalf, scheduleOf(bareHalf, null), 'mile', []).cautions.join()).not.toContain(
      'Gels can upset',
    );
  });

  test('a bare plan is one leg', () => {
    expect(planRaceSheet({ ...bareHalf, distanceM: HALF_M }, schedule, 'mile', []).legs).toEqual([
      'From the line: 7:56 per mile to the finish.',
    ]);
  });
});
