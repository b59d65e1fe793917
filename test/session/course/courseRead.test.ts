import { describe, expect, test } from 'vitest';
import { thinned } from '../../../src/core/course/gpxThin.ts';
import { measureLine } from '../../../src/core/course/line.ts';
import { sayDoorError } from '../../../src/core/units/result.ts';
import { type CourseRead, readCourse, takeCourseFile } from '../../../src/session/course/courseRead.ts';
import { stationsOf } from '../../../src/session/course/courseStations.ts';

/** The shapes that files of race organisers, recorders and route drawers come in, each made here by hand. */

const HEAD = '<gpx version="1.1" creator="hand" xmlns="http://www.topografix.com/GPX/1/1"';
const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);
const file = (inside: string, head = `${HEAD}>`): string =>
  `<?xml version="1.0" encoding="UTF-8"?>\n${head}${inside}</gpx>`;

interface Dot {
  readonly lat: number;
  readonly lon: number;
}

/** North along a straight street: a thousandth of a degree is 111.3 m at this latitude. */
const street = (count: number, fromLat = 54, step = 0.001): readonly Dot[] =>
  Array.from({ length: count }, (_, i) => ({ lat: fromLat + i * step, lon: 7 }));
const TEN_STEPS_M = 1113;

const dots = (points: readonly Dot[], tag = 'trkpt', inside = ''): string =>
  points
    .map(({ lat, lon }) => `<${tag} lat="${lat.toFixed(7)}" lon="${lon.toFixed(7)}">${inside}</${tag}>`)
    .join('\n');
const track = (...segments: readonly (readonly Dot[])[]): string =>
  `<trk><name>Along the mole</name>${segments.map((s) => `<trkseg>${dots(s)}</trkseg>`).join('')}</trk>`;

const read = (bytes: Uint8Array, officialM = TEN_STEPS_M): CourseRead => {
  const got = readCourse(bytes, 'file.gpx', officialM);
  if (!got.ok) throw new Error(sayDoorError(got.error));
  return got.value;
};
const refusal = (text: string): string => {
  const got = readCourse(utf8(text), 'file.gpx', 1000);
  return got.ok ? 'taken' : sayDoorError(got.error);
};
/** Length of what was read, metres, before it is scaled. */
const lengthM = ({ course }: CourseRead): number =>
  measureLine(course?.points ?? [], TEN_STEPS_M)?.recordedM ?? Number.NaN;

describe('twelve shapes of GPX', () => {
  test('1. several segments: one line, the gap between them run straight', () => {
    const got = read(utf8(file(track(street(4), street(4, 54.004), street(3, 54.008)))));
    expect(got.course?.points).toHaveLength(11);
    expect(lengthM(got)).toBeCloseTo(TEN_STEPS_M, -1);
  });

  test('2. a route and no track', () => {
    const got = read(utf8(file(`<rte><name>The race</name>${dots(street(11), 'rtept')}</rte>`)));
    expect(got.course?.name).toBe('The race');
    expect(lengthM(got)).toBeCloseTo(TEN_STEPS_M, -1);
  });

  test('3. no times, no heights', () => {
    const got = read(utf8(file(track(street(11)))));
    expect(got.course?.points.every((p) => p.elevationM === null)).toBe(true);
    expect(got.notes).toEqual([]);
  });

  test('4. every point three times over', () => {
    const got = read(utf8(file(track(street(11).flatMap((p) => [p, p, p])))));
    expect(lengthM(got)).toBeCloseTo(TEN_STEPS_M, -1);
    expect(measureLine(got.course?.points ?? [], TEN_STEPS_M)?.alongM.at(-1)).toBe(TEN_STEPS_M);
  });

  test('5. from the finish to the start: as it stands, and turned round it is the race', () => {
    const got = read(utf8(file(track(street(11).toReversed()))));
    const [first, last] = [got.course?.points[0], got.course?.points.at(-1)];
    expect(first?.latitudeDeg).toBeGreaterThan(last?.latitudeDeg ?? 90);
    expect(
      lengthM({ ...got, course: { name: '', points: got.course?.points.toReversed() ?? [] } }),
    ).toBeCloseTo(TEN_STEPS_M, -1);
  });

  test('6. a hundred kilometres', () => {
    const got = read(utf8(file(track(street(9000, 54, 0.0001)))), 100_000);
    const line = measureLine(got.course?.points ?? [], 100_000);
    expect(line?.recordedM).toBeGreaterThan(100_100);
    expect(line?.recordedM).toBeLessThan(100_250);
    expect(line?.alongM.at(-1)).toBe(100_000);
  });

  test('7. two hundred thousand points: thinned to what a plan file holds, the ends and the length kept', () => {
    const long = street(200_000, 54, 0.000005);
    const got = read(utf8(file(track(long))), 111_300);
    const points = got.course?.points ?? [];
    expect(points.length).toBeLessThanOrEqual(15_000);
    expect(points[0]?.latitudeDeg).toBeCloseTo(54, 7);
    expect(points.at(-1)?.latitudeDeg).toBeCloseTo(54 + 199_999 * 0.000005, 7);
    expect(Math.abs((measureLine(points, 111_300)?.recordedM ?? 0) / 111_300 - 1)).toBeLessThan(0.001);
  });

  test('8. with a byte order mark', () => {
    expect(lengthM(read(utf8(`\uFEFF${file(track(street(11)))}`)))).toBeCloseTo(TEN_STEPS_M, -1);
  });

  test('9. with prefixes, namespaces and extensions of a maker', () => {
    const inside =
      '<g:ele>7</g:ele><g:extensions><m:hr xmlns:m="urn:m">150</m:hr><m:ele>900</m:ele></g:extensions>';
    const got = read(
      utf8(
        `<?xml version="1.0"?><g:gpx xmlns:g="http://www.topografix.com/GPX/1/1" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance"><g:trk><g:trkseg>${dots(street(11), 'g:trkpt', inside)}</g:trkseg></g:trk></g:gpx>`,
      ),
    );
    expect(got.course?.points.map((p) => p.elevationM)).toEqual(Array.from({ length: 11 }, () => 7));
  });

  test('10. in ISO-8859-1', () => {
    const text = file(track(street(11)).replace('Along the mole', 'Küste à pied')).replace(
      'UTF-8',
      'ISO-8859-1',
    );
    const got = read(Uint8Array.from(text, (c) => c.charCodeAt(0)));
    expect(got.course?.name).toBe('Küste à pied');
  });

  test('11. empty, or without a point', () => {
    expect(refusal('')).toBe('the file: expected a GPX file, found nothing');
    expect(refusal(file(''))).toBe(
      'the file: expected at least one usable point, found no track, route or waypoint',
    );
    expect(refusal(file(track(street(1))))).toBe(
      'the file: expected a track or route of at least two points, found no line',
    );
  });

  test('12. no XML', () => {
    expect(refusal('km;time\n1;4:56')).toBe('the file: expected a GPX file, found text that begins with "k"');
    expect(refusal('<html><body>Not found</body></html>')).toBe(
      'the file: expected a gpx element at the top, found html',
    );
  });

  test('and several at once: a half and a ten of the same town', () => {
    const got = read(
      utf8(file(track(street(11)) + track(street(21)).replace('Along the mole', 'Twice'))),
      2226,
    );
    expect(got.course?.name).toBe('Twice');
    expect(got.notes[0]).toContain('2 lines');
  });
});

describe('hostile files', () => {
  test('an entity bomb is text that nobody expands', () => {
    const bomb = Array.from({ length: 20 }, (_, i) => `<!ENTITY l${i + 1} "${`&l${i};`.repeat(10)}">`).join(
      '',
    );
    const got = read(
      utf8(
        `<?xml version="1.0"?><!DOCTYPE gpx [<!ENTITY l0 "lol">${bomb}]>${HEAD}>${track(street(11)).replace('Along the mole', '&l20;')}</gpx>`,
      ),
    );
    expect(got.course?.name).toBe('&l20;');
    expect(lengthM(got)).toBeCloseTo(TEN_STEPS_M, -1);
  });

  test('a script in a name is a name', () => {
    const got = read(
      utf8(file(track(street(11)).replace('Along the mole', '&lt;script&gt;alert(1)&lt;/script&gt;'))),
    );
    expect(got.course?.name).toBe('<script>alert(1)</script>');
  });

  test('1e308 degrees are left out and said', () => {
    const got = read(
      utf8(
        file(
          `<trk><trkseg>${dots(street(11))}<trkpt lat="1e308" lon="7"/><trkpt lat="54" lon="-1e308"/></trkseg></trk>`,
        ),
      ),
    );
    expect(got.course?.points).toHaveLength(11);
    expect(got.notes).toEqual([
      'Left out: 1 point without a usable lat.',
      'Left out: 1 point without a usable lon.',
    ]);
  });

  test('500 MB are refused before a byte is read', async () => {
    let opened = false;
    const got = await takeCourseFile(
      {
        name: 'huge.gpx',
        size: 500_000_000,
        arrayBuffer: async () => {
          opened = true;
          return new ArrayBuffer(0);
        },
      },
      1000,
    );
    expect(got).toEqual({ ok: false, why: 'the file: expected at most 64 MB, found 500 MB' });
    expect(opened).toBe(false);
  });

  test('a file that vanishes while it is read is said to', async () => {
    const got = await takeCourseFile(
      { name: 'gone.gpx', size: 10, arrayBuffer: () => Promise.reject(new Error('gone')) },
      1000,
    );
    expect(got).toEqual({ ok: false, why: 'the file: it could not be read from the disk' });
  });
});

describe('waypoints', () => {
  const line = measureLine(
    street(101).map((p) => ({ latitudeDeg: p.lat, longitudeDeg: p.lon, elevationM: null })),
    10_000,
  );
  const wpt = (lat: number, lon: number, name: string): string =>
    `<wpt lat="${lat}" lon="${lon}"><name>${name}</name></wpt>`;

  test('that name something to take are stations on the course; the others, and those far aside, are not', () => {
    const got = read(
      utf8(
        file(
          wpt(54.05, 7.0003, 'Water 1') +
            wpt(54.07, 7, 'Aid station') +
            wpt(54.08, 7, 'Toilet') +
            wpt(54.09, 7.01, 'Water far away'),
        ),
      ),
    );
    expect(got.course).toBeNull();
    if (line === null) throw new Error('no line');
    expect(stationsOf(got.waypoints, line)).toEqual([
      { atM: 5000, offers: ['water'] },
      { atM: 7000, offers: ['water', 'drink', 'food'] },
    ]);
  });
});

describe('the log of a past run', () => {
  const fix = (i: number, accuracy = 5): string =>
    JSON.stringify({
      timestamp: 1_800_000_000_000 + i * 1000,
      coords: { latitude: 54 + i * 0.00003, longitude: 7, accuracy, altitude: 30, speed: 3.3 },
    });
  const event = (i: number, name: string): string =>
    JSON.stringify({ timestamp: 1_800_000_000_000 + i * 1000, event: name });

  test('draws its way from the start to the end, by its good fixes, without heights', () => {
    const lines = [
      ...Array.from({ length: 60 }, (_, i) => fix(i - 60)),
      event(0, 'start'),
      ...Array.from({ length: 600 }, (_, i) => fix(i, i % 50 === 7 ? 200 : 5)),
      event(600, 'stop'),
      ...Array.from({ length: 60 }, (_, i) => fix(600 + i)),
    ];
    const got = read(utf8(lines.join('\n')), 2000);
    const points = got.course?.points ?? [];
    expect(points[0]?.latitudeDeg).toBeCloseTo(54, 4);
    expect(points.at(-1)?.latitudeDeg).toBeCloseTo(54.018, 3);
    expect(points.every((p) => p.elevationM === null)).toBe(true);
    expect(measureLine(points, 2000)?.recordedM).toBeGreaterThan(1980);
    expect(measureLine(points, 2000)?.recordedM).toBeLessThan(2010);
  });

  test('without a way in it is refused by a sentence', () => {
    expect(refusal(event(0, 'start'))).toBe(
      'the log: expected a run with fixes along its way, found 0 good fixes',
    );
  });
});

describe('thinning', () => {
  test('leaves short recordings as they are', () => {
    const points = street(100).map((p) => ({ latitudeDeg: p.lat, longitudeDeg: p.lon, elevationM: null }));
    expect(thinned(points)).toBe(points);
  });
});
