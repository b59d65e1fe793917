import geodesic from 'geographiclib-geodesic';
import { describe, expect, test } from 'vitest';
import { measureLine } from '../../src/core/course/line.ts';
import { type LatLon, legM, WGS84_A_M, WGS84_F } from '../../src/core/geo/ruler.ts';

/** Karney's own library: the oracle, itself held to the published numbers below. */
const wgs84 = geodesic.Geodesic.WGS84;

const at = (latitudeDeg: number, longitudeDeg: number): LatLon => ({ latitudeDeg, longitudeDeg });
const dms = (degrees: number, minutes: number, seconds: number): number =>
  degrees + minutes / 60 + seconds / 3600;

const inverse = (a: LatLon, b: LatLon): { s12: number; azi1: number } => {
  const { s12, azi1 } = wgs84.Inverse(a.latitudeDeg, a.longitudeDeg, b.latitudeDeg, b.longitudeDeg);
  if (s12 === undefined || azi1 === undefined) throw new Error('the library gave no distance');
  return { s12, azi1 };
};

/** Points on the geodesic between two places, no more than legM apart. */
const along = (from: LatLon, to: LatLon, longestLegM: number): LatLon[] => {
  const line = wgs84.InverseLine(from.latitudeDeg, from.longitudeDeg, to.latitudeDeg, to.longitudeDeg);
  const legs = Math.ceil(line.s13 / longestLegM);
  return Array.from({ length: legs + 1 }, (_, i) => {
    const { lat2, lon2 } = line.Position((i * line.s13) / legs);
    return at(lat2 ?? Number.NaN, lon2 ?? Number.NaN);
  });
};

const sumM = (points: readonly LatLon[]): number =>
  points.slice(1).reduce((sum, p, i) => sum + legM(points[i] as LatLon, p), 0);

/** A leg between two fixes or two points of a line: a micrometre. */
const LEG_TOLERANCE_M = 1e-6;

describe('WGS 84 [seen: geographiclib-js geodesic/Math.js.in 2a6853d9]', () => {
  test('equatorial radius and flattening', () => {
    expect(WGS84_A_M).toBe(6378137);
    expect(1 / WGS84_F).toBeCloseTo(298.257223563, 9);
  });
  test('polar radius 6 356 752.314245 m', () => {
    expect(WGS84_A_M * (1 - WGS84_F)).toBeCloseTo(6356752.314245, 6);
  });
});

describe('Geoscience Australia, the worked example of Vincenty’s formulae [seen: GeodePy and chrisveness/geodesy tests]', () => {
  const flindersPeak = at(-dms(37, 57, 3.7203), dms(144, 25, 29.5244));
  const buninyong = at(-dms(37, 39, 10.1561), dms(143, 55, 35.3839));
  const published = { distanceM: 54972.271, azimuthDeg: dms(306, 52, 5.37) };

  test('the library agrees to the last printed digit', () => {
    const { s12, azi1 } = inverse(flindersPeak, buninyong);
    expect(Math.abs(s12 - published.distanceM)).toBeLessThan(0.0005);
    expect(Math.abs(azi1 + 360 - published.azimuthDeg)).toBeLessThan(2e-6);
  });
  test('the ruler, in legs of a kilometre, agrees to the last printed digit', () => {
    expect(Math.abs(sumM(along(flindersPeak, buninyong, 1000)) - published.distanceM)).toBeLessThan(0.0005);
  });
  test('a course recorded along it measures as long', () => {
    const points = along(flindersPeak, buninyong, 250).map((p) => ({ ...p, elevationM: null }));
    const line = measureLine(points, 55000);
    expect(Math.abs((line?.recordedM ?? 0) - published.distanceM)).toBeLessThan(0.0005);
  });
});

describe('Karney’s GeodTest, lines of under 1.1 km, 50-digit truth [seen: georust/geographiclib-rs test_fixtures/GeodTest-100.dat c5e906d9]', () => {
  /** First longitude 0 throughout. */
  const lines = [
    {
      lat1: 11.898997917427,
      lat2: 11.899065303345823,
      lon2: 0.000257501685735042,
      s12: 29.0265121,
    },
    {
      lat1: 47.900780879363,
      lat2: 47.89930978834402,
      lon2: 0.001327005894209747,
      s12: 191.3088022,
    },
    {
      lat1: 36.800966049655,
      lat2: 36.80288952928961,
      lon2: 0.002261122427425817,
      s12: 293.7372273,
    },
    {
      lat1: 60.077425015363,
      lat2: 60.078197903525385,
      lon2: 0.010531670881733178,
      s12: 592.5766309,
    },
    {
      lat1: 18.725775553796,
      lat2: 18.724785210853174,
      lon2: 0.006615636046166963,
      s12: 706.2676803,
    },
    {
      lat1: 56.310719132311,
      lat2: 56.30425838780839,
      lon2: 0.005380024608319352,
      s12: 792.7231052,
    },
    {
      lat1: 2.514600234503,
      lat2: 2.506446532968658,
      lon2: 0.00196695535966103,
      s12: 927.7647972,
    },
    {
      lat1: 8.849455388939,
      lat2: 8.843107684651578,
      lon2: 0.007694428892432052,
      s12: 1099.6867173,
    },
  ];

  test.each(lines)('$s12 m: the library', ({ lat1, lat2, lon2, s12 }) => {
    expect(Math.abs(inverse(at(lat1, 0), at(lat2, lon2)).s12 - s12)).toBeLessThan(LEG_TOLERANCE_M);
  });
  test.each(lines)('$s12 m: the ruler', ({ lat1, lat2, lon2, s12 }) => {
    expect(Math.abs(legM(at(lat1, 0), at(lat2, lon2)) - s12)).toBeLessThan(LEG_TOLERANCE_M);
  });
  test.each(lines)('$s12 m: the same leg across the date line', ({ lat1, lat2, lon2, s12 }) => {
    const west = 180 - lon2 / 2;
    expect(Math.abs(legM(at(lat1, west), at(lat2, west + lon2 - 360)) - s12)).toBeLessThan(LEG_TOLERANCE_M);
  });
});

describe('One degree of latitude on the ellipsoid [computed by Vincenty’s formulae, agrees with textbook tables]', () => {
  test.each([
    [0, 110574.304],
    [45, 111131.778],
    [60, 111412.273],
  ])('about %i° it is %f m', (latitudeDeg, lengthM) => {
    const south = at(latitudeDeg - 0.5, 10);
    const north = at(latitudeDeg + 0.5, 10);
    expect(Math.abs(sumM(along(south, north, 1000)) - lengthM)).toBeLessThan(0.001);
  });
});

describe('The library, on its own published long lines [seen: geographiclib-js geodesic/test/geodesictest.js]', () => {
  test.each([
    { lat1: 35.60777, lon1: -139.44815, lat2: -11.17491, lon2: -69.95921, s12: 8935244.56048183 },
    { lat1: -19.79938, lon1: -174.47484, lat2: -11.99349, lon2: -154.35109, s12: 2319004.860116939 },
  ])('$s12 m', ({ lat1, lon1, lat2, lon2, s12 }) => {
    expect(Math.abs(inverse(at(lat1, lon1), at(lat2, lon2)).s12 - s12)).toBeLessThan(1e-7);
  });
});
