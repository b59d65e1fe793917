import { expect, test } from 'vitest';
import type { Input } from '../../src/core/estimate/input.ts';
import { simulatedGeolocation } from '../../src/sensors/simulatedGeolocation.ts';
import { pretendTime } from '../session/pretend.ts';

const fix = (atMs: number, latitudeDeg: number): Input => ({
  type: 'fix',
  atMs,
  fix: { timestampMs: atMs, latitudeDeg, longitudeDeg: 7, accuracyM: 5, speedMps: 3, altitudeM: null },
});
const TAPE: readonly Input[] = [
  fix(9000, 54),
  { type: 'event', atMs: 10_000, event: 'start' },
  ...Array.from({ length: 5 }, (_, i) => fix(11_000 + 1000 * i, 54.001 + 0.001 * i)),
];

test('the simulated runner waits in the pen for the start, and then keeps the time of the tape', () => {
  const time = pretendTime();
  let startedMs: number | null = null;
  const told: { readonly atMs: number; readonly latitude: number; readonly timestamp: number }[] = [];
  const receiver = simulatedGeolocation({
    tape: TAPE,
    nowMs: time.nowMs,
    every: time.every,
    startedMs: () => startedMs,
  });
  const id = receiver.watchPosition(({ coords, timestamp }) =>
    told.push({ atMs: time.nowMs(), latitude: coords.latitude, timestamp }),
  );
  time.pass(5000);
  expect(told.length).toBeGreaterThanOrEqual(4);
  expect(new Set(told.map((t) => t.latitude))).toEqual(new Set([54]));
  startedMs = time.nowMs();
  const from = told.length;
  time.pass(3200);
  expect(told.slice(from).map((t) => t.latitude.toFixed(3))).toEqual(['54.001', '54.002', '54.003']);
  for (const [i, t] of told.slice(from).entries()) {
    expect(t.timestamp).toBe(startedMs + 1000 * (i + 1));
    expect(t.atMs - t.timestamp).toBeLessThan(250);
  }
  receiver.clearWatch(id);
  const before = told.length;
  time.pass(5000);
  expect(told).toHaveLength(before);
});
