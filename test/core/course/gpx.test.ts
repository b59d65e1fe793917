import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseGpx } from '../../../src/core/course/gpx.ts';
import { courseOfGpx } from '../../../src/core/course/gpxCourse.ts';
import { gpxTimeMs } from '../../../src/core/course/gpxTime.ts';
import type { Gpx } from '../../../src/core/course/gpxTypes.ts';
import { sayDoorError } from '../../../src/core/units/result.ts';
import { english } from '../../support/english.ts';

const parse = (text: string): Gpx => {
  const got = parseGpx(text);
  if (!got.ok) throw new Error(sayDoorError(got.error));
  return got.value;
};
const refusal = (text: string): string => {
  const got = parseGpx(text);
  return got.ok ? 'accepted' : sayDoorError(got.error);
};
const file = (inside: string, head = '<?xml version="1.0" encoding="UTF-8"?>'): string =>
  `${head}<gpx version="1.1" creator="test" xmlns="http://www.topografix.com/GPX/1/1">${inside}</gpx>`;
const track = (points: string): string => file(`<trk><trkseg>${points}</trkseg></trk>`);
const places = (gpx: Gpx): number[][] => gpx.tracks.map((t) => t.segments.flat().map((p) => p.latitudeDeg));

describe('parseGpx', () => {
  it('reads tracks with several stretches, routes and waypoints', () => {
    const gpx = parse(
      file(
        '<metadata><name>Town race</name></metadata>' +
          '<wpt lat="1" lon="2"><ele>3</ele><name>Water</name></wpt>' +
          '<rte><name>Way</name><rtept lat="4" lon="5"/><rtept lat="6" lon="7"/></rte>' +
          '<trk><name>Half</name><trkseg><trkpt lat="8" lon="9"><ele>10.5</ele><time>2027-05-09T08:30:00Z</time></trkpt></trkseg>' +
          '<trkseg/><trkseg><trkpt lat="-11" lon="-12"/></trkseg></trk>',
      ),
    );
    const bare = { elevationM: null, timeMs: null, name: null };
    expect(gpx).toEqual({
      name: 'Town race',
      waypoints: [{ latitudeDeg: 1, longitudeDeg: 2, elevationM: 3, timeMs: null, name: 'Water' }],
      routes: [
        {
          name: 'Way',
          segments: [
            [
              { latitudeDeg: 4, longitudeDeg: 5, ...bare },
              { latitudeDeg: 6, longitudeDeg: 7, ...bare },
            ],
          ],
        },
      ],
      tracks: [
        {
          name: 'Half',
          segments: [
            [{ latitudeDeg: 8, longitudeDeg: 9, elevationM: 10.5, timeMs: 1_809_851_400_000, name: null }],
            [{ latitudeDeg: -11, longitudeDeg: -12, ...bare }],
          ],
        },
      ],
      skipped: 0,
      faults: [],
    });
  });

  it('reads prefixes, lets extensions be, whatever they hold', () => {
    const gpx = parse(
      '\uFEFF<g:gpx xmlns:g="http://www.topografix.com/GPX/1/1"><g:trk><g:trkseg><g:trkpt lat="1" lon="2">' +
        '<g:extensions><x:name>no</x:name><x:ele>99</x:ele><trkpt lat="50" lon="50"/></g:extensions><g:ele>7</g:ele>' +
        '</g:trkpt></g:trkseg></g:trk></g:gpx>',
    );
    expect(gpx.tracks).toEqual([
      {
        name: null,
        segments: [[{ latitudeDeg: 1, longitudeDeg: 2, elevationM: 7, timeMs: null, name: null }]],
      },
    ]);
  });

  it('skips points that are none and says how many and why', () => {
    const gpx = parse(
      track(
        '<trkpt lat="1" lon="1"/><trkpt lon="1"/><trkpt lat="" lon="1"/><trkpt lat="91" lon="1"/><trkpt lat="NaN" lon="1"/>' +
          '<trkpt lat="0x10" lon="1"/><trkpt lat="1" lon="1e308"/><trkpt lat="2" lon="2"><ele>1e9</ele><time>noon</time></trkpt>',
      ),
    );
    expect(places(gpx)).toEqual([[1, 2]]);
    expect(gpx.tracks[0]?.segments[0]?.[1]).toMatchObject({ elevationM: null, timeMs: null });
    expect(gpx.skipped).toBe(6);
    expect(english(gpx.faults)).toEqual(['5 points without a usable lat', '1 point without a usable lon']);
  });

  it('reads a bare ampersand as what was meant, in CDATA too', () => {
    const cdata = parse(file('<wpt lat="1" lon="2"><name><![CDATA[A & B]]></name></wpt>'));
    expect(cdata.waypoints[0]?.name).toBe('A & B');
    const gpx = parse(file('<trk><name>Rock & Roll</name><trkseg><trkpt lat="1" lon="2"/></trkseg></trk>'));
    expect(gpx.tracks[0]?.name).toBe('Rock & Roll');
  });

  it('gives what came before the cut where a file is cut short', () => {
    expect(
      places(
        parse(
          '<gpx><trk><trkseg><trkpt lat="1" lon="2"/><trkpt lat="2" lon="2"/><trkpt lat="3" lon="2"><ele>5',
        ),
      ),
    ).toEqual([[1, 2]]);
  });

  it('expands no entity of a document type, however often it is nested', () => {
    const lol = Array.from({ length: 12 }, (_, i) => `<!ENTITY l${i + 1} "${`&l${i};`.repeat(10)}">`).join(
      '',
    );
    const gpx = parse(
      file(
        '<trk><name>&l12; &amp; &lt;b&gt;</name><trkseg><trkpt lat="1" lon="2"/></trkseg></trk>',
        `<?xml version="1.0"?><!DOCTYPE gpx [<!ENTITY l0 "lol">${lol}<!ENTITY f SYSTEM "file:///etc/passwd">]>`,
      ),
    );
    expect(gpx.tracks[0]?.name).toBe('&l12; & <b>');
  });

  const refusals: readonly (readonly [string, string, string])[] = [
    ['nothing', '', 'the file: expected a GPX file, found nothing'],
    ['JSON', '{"a": 1}', 'the file: expected a GPX file, found text that begins with "{"'],
    ['another XML', '<html><body/></html>', 'the file: expected a gpx element at the top, found html'],
    ['no point', file(''), 'the file: expected at least one usable point, found no track, route or waypoint'],
    [
      'no usable point',
      track('<trkpt lat="x" lon="1"/>'),
      'the file: expected at least one usable point, found 1 point without a usable lat',
    ],
    ['a nest', '<gpx>'.repeat(5_000), 'the file: expected at least one usable point'],
    [
      'too much',
      ' '.repeat(64_000_001),
      'the file: expected at most 64 MB of GPX, found 64000001 characters',
    ],
  ];
  it.each(refusals)('refuses %s with a clear sentence', (_, text, expected) => {
    expect(refusal(text)).toContain(expected);
  });

  it('reads a script for the text it is', () => {
    const gpx = parse(file('<wpt lat="1" lon="2"><name><![CDATA[<script>alert(1)</script>]]></name></wpt>'));
    expect(gpx.waypoints[0]?.name).toBe('<script>alert(1)</script>');
  });

  it('never throws on any text, GPX-like or not', () => {
    const piece = fc.oneof(
      fc.constantFrom(
        '<gpx>',
        '</gpx>',
        '<trk>',
        '</trk>',
        '<trkseg>',
        '<trkpt lat="1" lon="2">',
        '</trkpt>',
        '<ele>',
      ),
      fc.constantFrom(
        '<!DOCTYPE gpx [',
        ']>',
        '<![CDATA[',
        ']]>',
        '<!--',
        '-->',
        '<?xml',
        '?>',
        '&amp;',
        '&',
        '<a:b c="',
      ),
      fc.string(),
      fc.double().map((n) => `<trkpt lat="${n}" lon="${n}"/>`),
    );
    fc.assert(
      fc.property(fc.array(piece), fc.boolean(), (pieces, begun) => {
        const got = parseGpx(`${begun ? '<gpx><trk><trkseg>' : ''}${pieces.join('')}`);
        if (!got.ok) return got.error.expected !== '';
        const points = [...got.value.tracks, ...got.value.routes].flatMap((p) => p.segments.flat());
        return [...points, ...got.value.waypoints].every(
          (p) => Math.abs(p.latitudeDeg) <= 90 && Math.abs(p.longitudeDeg) <= 180,
        );
      }),
      { numRuns: 500 },
    );
  });
});

describe('gpxTimeMs', () => {
  it('agrees with Date on every whole millisecond, zones included', () => {
    const zones = fc.integer({ min: -14 * 60, max: 14 * 60 });
    fc.assert(
      fc.property(
        fc.date({ min: new Date('1970-01-01'), max: new Date('2099-12-31'), noInvalidDate: true }),
        zones,
        (date, zone) => {
          const local = new Date(date.getTime() + zone * 60_000).toISOString().slice(0, -1);
          const sign = zone < 0 ? '-' : '+';
          const two = (n: number): string => String(n).padStart(2, '0');
          const text = `${local}${sign}${two(Math.trunc(Math.abs(zone) / 60))}:${two(Math.abs(zone) % 60)}`;
          expect(gpxTimeMs(text)).toBe(date.getTime());
        },
      ),
    );
  });

  it.each([
    ['2027-05-09T08:30:00Z', 1_809_851_400_000],
    [' 2027-05-09 08:30:00 ', 1_809_851_400_000],
    ['2027-05-09T08:30Z', 1_809_851_400_000],
    ['2027-05-09T08:30:00.25Z', 1_809_851_400_250],
    ['2027-02-30T08:30:00Z', null],
    ['2027-13-01T08:30:00Z', null],
    ['2027-05-09', null],
    ['', null],
  ])('%j is %j', (text, ms) => {
    expect(gpxTimeMs(text)).toBe(ms);
  });
});

describe('courseOfGpx', () => {
  const line = (name: string, points: number): string =>
    `<trk><name>${name}</name><trkseg>${Array.from({ length: points }, (_, i) => `<trkpt lat="${54 + i / 1000}" lon="7"/>`).join('')}</trkseg></trk>`;

  it('takes the line of the right length out of several, scaled to the official distance', () => {
    const gpx = parse(file(line('five', 46) + line('ten', 91)));
    const got = courseOfGpx(gpx, 10_000);
    if (!got.ok) throw new Error('no course');
    expect(got.value.recordedM).toBeGreaterThan(9900);
    expect(got.value.recordedM).toBeLessThan(10_100);
    expect(got.value.alongM.at(-1)).toBe(10_000);
  });

  it('puts the parts of a course in the order in which they meet', () => {
    const part = (from: number): string =>
      `<trk><trkseg>${Array.from({ length: 31 }, (_, i) => `<trkpt lat="${54 + (from + i) / 1000}" lon="7"/>`).join('')}</trkseg></trk>`;
    const got = courseOfGpx(parse(file(part(60) + part(0) + part(30))), 10_000);
    if (!got.ok) throw new Error('no course');
    expect(got.value.recordedM).toBeLessThan(10_100);
    expect(got.value.northM[0]).toBeLessThan(got.value.northM.at(-1) ?? 0);
  });

  it('leaves the pen before a recorded run and the walk after it out', () => {
    const points: string[] = [];
    let north = 0;
    for (let s = 0; s < 4000; s++) {
      north += s < 200 ? 0 : s < 3534 ? 3 : s < 3800 ? 1.3 : 0;
      const shake = s < 200 ? (s % 3) * 3 : 0;
      const time = new Date(1_800_000_000_000 + s * 1000).toISOString();
      points.push(`<trkpt lat="${54 + (north + shake) / 111_300}" lon="7"><time>${time}</time></trkpt>`);
    }
    const got = courseOfGpx(parse(file(`<trk><trkseg>${points.join('')}</trkseg></trk>`)), 10_000);
    if (!got.ok) throw new Error('no course');
    expect(Math.abs(got.value.recordedM - 10_000)).toBeLessThan(40);
  });

  it('takes waypoints where there is nothing else, and refuses a single point', () => {
    expect(courseOfGpx(parse(file('<wpt lat="1" lon="2"/><wpt lat="1.01" lon="2"/>')), 1000).ok).toBe(true);
    expect(courseOfGpx(parse(file('<wpt lat="1" lon="2"/>')), 1000)).toMatchObject({ ok: false });
  });
});
