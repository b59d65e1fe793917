import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { eastM, northM, planeAt } from '../../src/core/geo/ruler.ts';
import { parsePlanFile } from '../../src/core/plan/parseRacePlan.ts';
import { written } from '../../src/core/units/message.ts';
import { crc32, deflate, toBase64Url } from '../../src/share/bytes.ts';
import { codeIn, decodePlan, encodePlan, encodeWithin, linkOf } from '../../src/share/code.ts';
import { simplified } from '../../src/share/line.ts';
import { drawCode, EASY_CODE_CHARS, readCode } from '../../src/share/picture.ts';
import { sharedOf, textOf } from '../../src/share/planFile.ts';

const PLAN = {
  version: 1,
  kind: 'race',
  name: 'Quay half',
  distanceM: 21_097.5,
  goalS: 6240,
  stations: [{ atM: 4700, offers: ['water', 'gel'] }],
  fuel: [{ item: 'gel', atM: 10_550 }],
};

/** A half marathon along a bent shore with a point every 15 m, heights and all. */
const SHORE = Array.from({ length: 1400 }, (_, i) => [
  Number((54.1 + 0.00012 * i + 0.002 * Math.sin(i / 40)).toFixed(6)),
  Number((7.3 + 0.003 * Math.cos(i / 55)).toFixed(6)),
  Number((8 + 4 * Math.sin(i / 90)).toFixed(1)),
]);
const FILE = JSON.stringify({ ...PLAN, course: { points: SHORE } });

const roundTrip = async (code: string) => {
  const got = await decodePlan(code);
  if (!got.ok) throw new Error(written(got.error));
  return got.value;
};

describe('a plan as a code', () => {
  test('comes back whole, with its course to the last place', async () => {
    const { text } = await encodePlan(sharedOf(FILE));
    const back = await roundTrip(text);
    expect(JSON.parse(textOf(back))).toEqual(JSON.parse(FILE));
    expect(parsePlanFile(textOf(back))).toEqual(parsePlanFile(FILE));
  });

  test('is a link that holds nothing but the address and letters that every program keeps', async () => {
    const link = linkOf('https://soundline.invalid', (await encodePlan(sharedOf(FILE))).text);
    expect(link).toMatch(/^https:\/\/soundline\.invalid\/#\/share\/[\w.-]+$/);
    expect(codeIn(link)).toBe(codeIn(codeIn(link)));
    expect((await decodePlan(codeIn(link))).ok).toBe(true);
  });

  test('any plan comes back', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.string(),
        fc.integer({ min: 100, max: 200_000 }),
        fc.array(
          fc.tuple(
            fc.double({ min: -89, max: 89, noNaN: true }),
            fc.double({ min: -179, max: 179, noNaN: true }),
          ),
        ),
        async (name, distanceM, places) => {
          const course = places.map(([lat, lon]) => ({
            latitudeDeg: Math.round(lat * 1e6) / 1e6,
            longitudeDeg: Math.round(lon * 1e6) / 1e6,
            elevationM: null,
          }));
          const shared = { plan: { ...PLAN, name, distanceM }, course };
          const back = await roundTrip((await encodePlan(shared)).text);
          expect(back.plan).toEqual(JSON.parse(JSON.stringify(shared.plan)));
          // -0 is 0 on the ground.
          expect(back.course?.map((p) => [p.latitudeDeg + 0, p.longitudeDeg + 0])).toEqual(
            course.map((p) => [p.latitudeDeg + 0, p.longitudeDeg + 0]),
          );
        },
      ),
      { numRuns: 60 },
    );
  });

  test('says that it was cut off, wherever it was', async () => {
    const { text } = await encodePlan(sharedOf(JSON.stringify(PLAN)));
    for (let n = 0; n < text.length; n++) {
      const got = await decodePlan(text.slice(0, n));
      expect(got.ok).toBe(false);
      if (!got.ok && n > 8) expect(written(got.error)).toMatch(/cut off/);
    }
  });

  test('says that it was changed, whichever letter it was', async () => {
    const { text } = await encodePlan(sharedOf(JSON.stringify(PLAN)));
    const body = text.lastIndexOf('.') + 1;
    for (let n = body; n < text.length; n++) {
      const other = text[n] === 'A' ? 'B' : 'A';
      const got = await decodePlan(`${text.slice(0, n)}${other}${text.slice(n + 1)}`);
      // Some last bits of base64 belong to no byte: then nothing was changed.
      if (got.ok) expect(got.value.plan).toEqual(PLAN);
      else expect(written(got.error)).toMatch(/damaged/);
    }
  });

  /** A code that nothing is wrong with but what is in it. */
  const codeOf = async (body: unknown): Promise<string> => {
    const bytes = await deflate(new TextEncoder().encode(JSON.stringify(body)));
    const text = toBase64Url(bytes);
    return ['1', text.length.toString(36), crc32(bytes).toString(36), text].join('.');
  };
  const line = { steps: 1e6, places: [54_000_000, 7_000_000, 100, 100], heights: [10, 5] };

  test.each([
    ['no steps', { ...line, steps: 0 }],
    ['steps that are none', { ...line, steps: 1.5 }],
    ['half a point', { ...line, places: [1, 2, 3] }],
    ['places that are none', { ...line, places: ['a', 'b'] }],
    ['places between whole numbers', { ...line, places: [1.5, 2] }],
    ['fewer heights than points', { ...line, heights: [1] }],
    ['heights that are none', { ...line, heights: 'high' }],
    ['no line at all', []],
  ])('with a course that has %s is damaged', async (_what, bad) => {
    expect((await roundTrip(await codeOf({ plan: PLAN, line }))).course).toHaveLength(2);
    const got = await decodePlan(await codeOf({ plan: PLAN, line: bad }));
    expect(got.ok ? '' : written(got.error)).toMatch(/damaged/);
  });

  test('without a plan in it is none, and one that would fill the memory is damaged', async () => {
    for (const body of [null, [], {}, { plan: [] }]) {
      const got = await decodePlan(await codeOf(body));
      expect(got.ok ? '' : written(got.error)).toMatch(/no plan/);
    }
    const bomb = await decodePlan(await codeOf({ plan: PLAN, more: ' '.repeat(5_000_000) }));
    expect(bomb.ok ? '' : written(bomb.error)).toMatch(/damaged/);
  });

  test('of a later version says so; nonsense is no plan; never throws', async () => {
    const { text } = await encodePlan(sharedOf(JSON.stringify(PLAN)));
    const later = await decodePlan(text.replace(/^1\./, '2.'));
    expect(later.ok ? '' : written(later.error)).toMatch(/version 2/);
    await fc.assert(
      fc.asyncProperty(
        fc.oneof(
          fc.string(),
          fc.string().map((s) => `1.${s}`),
        ),
        async (s) => {
          expect((await decodePlan(s)).ok).toBe(false);
        },
      ),
    );
  });
});

describe('a plan as a picture', () => {
  test('a half marathon with its course fits, and says how far off the course may be', async () => {
    const shared = sharedOf(FILE);
    const code = await encodeWithin(shared, EASY_CODE_CHARS);
    if (code === null) throw new Error('it must fit');
    expect(code.text.length).toBeLessThanOrEqual(EASY_CODE_CHARS);
    expect(code.courseOffM).toBeGreaterThan(0);
    const back = await roundTrip(code.text);
    expect(back.plan).toEqual(shared.plan);
    const first = shared.course?.[0];
    if (!first || !back.course) throw new Error('there is a course');
    const plane = planeAt(first);
    const xy = back.course.map((p) => [eastM(plane, p), northM(plane, p)] as const);
    for (const p of shared.course ?? []) {
      const [x, y] = [eastM(plane, p), northM(plane, p)];
      const off = Math.min(
        ...xy.slice(1).map(([bx, by], i) => {
          const [ax, ay] = xy[i] ?? [0, 0];
          const l2 = (bx - ax) ** 2 + (by - ay) ** 2 || 1;
          const t = Math.min(1, Math.max(0, ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / l2));
          return Math.hypot(x - ax - t * (bx - ax), y - ay - t * (by - ay));
        }),
      );
      expect(off).toBeLessThanOrEqual(code.courseOffM);
    }
  });

  test('a plan that cannot fit gives none', async () => {
    expect(await encodeWithin(sharedOf(FILE), 100)).toBeNull();
  });

  test('is read back from its pixels, and from a smaller, greyer, noisier picture', async () => {
    const code = await encodeWithin(sharedOf(FILE), EASY_CODE_CHARS);
    const link = linkOf('https://soundline.invalid', code?.text ?? '');
    const rows = drawCode(link);
    for (const [scale, dark, light] of [
      [4, 0, 255],
      [3, 60, 190],
    ] as const) {
      const px = rows.length * scale;
      const data = new Uint8ClampedArray(px * px * 4);
      for (let y = 0; y < px; y++)
        for (let x = 0; x < px; x++) {
          const at = 4 * (y * px + x);
          const noise = ((x * 7919 + y * 104_729) % 21) - 10;
          const value = (rows[Math.floor(y / scale)]?.[Math.floor(x / scale)] ? dark : light) + noise;
          data.set([value, value, value, 255], at);
        }
      expect(readCode({ width: px, height: px, data })).toBe(link);
    }
  });

  test('a picture without a code has none', () => {
    expect(
      readCode({ width: 64, height: 64, data: new Uint8ClampedArray(64 * 64 * 4).fill(128) }),
    ).toBeNull();
  });
});

test('a straight line needs two points, a corner three', () => {
  const at = (east: number, north: number) => ({
    latitudeDeg: 54 + north / 111_300,
    longitudeDeg: 7 + east / 65_500,
    elevationM: null,
  });
  expect(simplified([at(0, 0), at(10, 0), at(20, 0), at(30, 0)], 1)).toHaveLength(2);
  expect(simplified([at(0, 0), at(50, 0), at(50, 50)], 1)).toHaveLength(3);
});
