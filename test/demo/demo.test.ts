import { readdirSync, statSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { climbM, slopeProfile } from '../../src/core/course/elevation.ts';
import { eastAtM, northAtM } from '../../src/core/course/line.ts';
import { readRacePlan } from '../../src/core/plan/parseRacePlan.ts';
import { DEMO_DISTANCE_M, demoCourse, stretchM } from '../../src/demo/course.ts';
import { demoDeadM, demoPlan } from '../../src/demo/race.ts';
import { STREETS } from '../../src/demo/streets.ts';

const course = demoCourse();

describe('the demo', () => {
  it('has a plan that the door lets in unchanged', () => {
    expect(readRacePlan(JSON.parse(JSON.stringify(demoPlan)))).toEqual({ ok: true, value: demoPlan });
  });

  it('has a course that is as long on the ground as it is officially', () => {
    expect(course.officialM).toBe(DEMO_DISTANCE_M);
    expect(Math.abs(course.recordedM - DEMO_DISTANCE_M)).toBeLessThan(10);
  });

  it('climbs 60 to 90 m, and has heights all along', () => {
    const profile = slopeProfile(course);
    if (!profile) throw new Error('no heights');
    expect(climbM(profile)).toBeGreaterThan(60);
    expect(climbM(profile)).toBeLessThan(90);
  });

  it('comes back along the sea front on the line on which it went out', () => {
    const front = stretchM('West Parade');
    const out = front.fromM + 500;
    // The cone stands at the end of Lifeboat Road: as far after it as before it is the same place.
    const coneM = stretchM('Lifeboat Road').toM;
    const backM = 2 * coneM - out;
    const apartM = Math.hypot(
      eastAtM(course, out) - eastAtM(course, backM),
      northAtM(course, out) - northAtM(course, backM),
    );
    expect(apartM).toBeLessThan(5);
  });

  it('has its tunnel on the course and each stretch longer than nothing', () => {
    for (const { fromM, toM } of demoDeadM) {
      expect(fromM).toBeGreaterThan(0);
      expect(toM).toBeLessThan(DEMO_DISTANCE_M);
    }
    expect(STREETS.every((s) => s.lengthM > 0)).toBe(true);
  });

  it('is small: the page carries it', () => {
    const bytes = readdirSync('src/demo').reduce((sum, file) => sum + statSync(`src/demo/${file}`).size, 0);
    expect(bytes).toBeLessThan(60_000);
  });
});
