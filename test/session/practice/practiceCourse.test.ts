import { describe, expect, test } from 'vitest';
import type { LinePoint } from '../../../src/core/course/line.ts';
import { wayM } from '../../../src/core/geo/ruler.ts';
import { pageKeep } from '../../../src/session/phone/pageKeep.ts';
import { createCourseChoice } from '../../../src/session/practice/practiceCourse.ts';
import {
  practiceCourseOfRace,
  readPracticeCourse,
} from '../../../src/session/practice/practiceCourseRead.ts';

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
const row = (n: number): readonly LinePoint[] =>
  Array.from({ length: n }, (_, i) => ({ latitudeDeg: 54 + 1e-4 * i, longitudeDeg: 7, elevationM: null }));
const track = (name: string, n: number): string =>
  `<trk><name>${name}</name><trkseg>${row(n)
    .map((p) => `<trkpt lat="${p.latitudeDeg}" lon="${p.longitudeDeg}"/>`)
    .join('')}</trkseg></trk>`;

describe('a file as the course of a session', () => {
  test('of several tracks is the longest', () => {
    const text = `<gpx version="1.1">${track('short', 20)}${track('long', 90)}${track('middle', 50)}</gpx>`;
    const got = readPracticeCourse(bytes(text), 'mine.gpx');
    expect(got.ok && got.value).toMatchObject({ name: 'long', lengthM: null });
    expect(got.ok && got.value.points.length).toBe(90);
  });

  test('of a run’s log is the way from its start to its stop', () => {
    const lines = row(80).map(({ latitudeDeg, longitudeDeg }, i) =>
      JSON.stringify({
        timestamp: 1_800_000_000_000 + 3000 * i,
        coords: { latitude: latitudeDeg, longitude: longitudeDeg, accuracy: 5 },
      }),
    );
    const start = JSON.stringify({ timestamp: 1_800_000_000_000 + 30_000, event: 'start' });
    const got = readPracticeCourse(bytes(lines.toSpliced(10, 0, start).join('\n')), 'Dyke');
    expect(got.ok && got.value.name).toBe('From the run Dyke');
    expect(got.ok && got.value.points[0]?.latitudeDeg).toBeCloseTo(54.001, 5);
  });

  test.each([
    ['<gpx version="1.1"><wpt lat="54" lon="7"/></gpx>', 'a track or route of at least two points'],
    [`<gpx version="1.1">${track('step', 3)}</gpx>`, 'a line of 100 m to 100 km'],
    ['{"timestamp": 1, "event": "start"}', 'a run with fixes along its way'],
  ])('%s is none', (text, expected) => {
    const got = readPracticeCourse(bytes(text), 'x');
    expect(!got.ok && got.error.expected).toBe(expected);
  });
});

describe('the course of the race as that of a session', () => {
  const points = row(500);
  const recordedM = wayM(points);
  test.each([
    ['as a whole, scaled to the race', recordedM * 1.01, recordedM * 1.01],
    ['lap by lap', recordedM * 3.03, recordedM * 1.01],
    ['as it measures, where the race is another', recordedM * 1.4, null],
  ])('is known %s', (_what, raceM, lengthM) => {
    const got = practiceCourseOfRace({ name: 'Half', points }, raceM);
    expect(got.ok && got.value.lengthM).toEqual(lengthM === null ? null : expect.closeTo(lengthM, 3));
  });
});

test('the course of sessions is kept until it is removed', () => {
  const keep = pageKeep({ localStorage: null });
  const course = { name: 'Dyke', lengthM: 5500, points: row(500) };
  createCourseChoice(keep).set(course);
  const again = createCourseChoice(keep);
  expect(again.course.value).toMatchObject({ name: 'Dyke', lengthM: 5500 });
  expect(again.course.value?.points).toHaveLength(500);
  again.set(null);
  expect(createCourseChoice(keep).course.value).toBeNull();
});
