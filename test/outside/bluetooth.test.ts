import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readHeartRate } from '../../src/sensors/bluetooth/heartRate.ts';
import { readRunning, stepsPerMin } from '../../src/sensors/bluetooth/running.ts';

/**
 * Bluetooth SIG, Heart Rate Service and Running Speed and Cadence Service: fields and flag bits as in the service's XML
 * (seen in a copy, oesmith/gatt-xml 4fd2ede1). The two packets are constructed from it, not published.
 */
const view = (...bytes: readonly number[]): DataView => new DataView(Uint8Array.from(bytes).buffer);

describe('constructed packets', () => {
  test('07 80 03 b4 75 00 1f 38 03 00: 3.5 m/s, 180 a minute, 1.17 m, 21 097.5 m, running', () => {
    expect(readRunning(view(0x07, 0x80, 0x03, 0xb4, 0x75, 0x00, 0x1f, 0x38, 0x03, 0x00))).toEqual({
      speedMps: 3.5,
      cadencePerMin: 180,
      strideM: 1.17,
      distanceM: 21_097.5,
      running: true,
    });
  });

  test('16 96 99 01 9a 01: 150 a minute, contact, intervals of 409 and 410 / 1024 s', () => {
    expect(readHeartRate(view(0x16, 0x96, 0x99, 0x01, 0x9a, 0x01))).toEqual({
      bpm: 150,
      contact: true,
      energyKJ: null,
      rrS: [409 / 1024, 410 / 1024],
    });
  });
});

const u16 = fc.integer({ min: 0, max: 0xffff });
const low = (x: number): number => x & 0xff;
const high = (x: number): number => (x >> 8) & 0xff;

describe('10 000 packets built from the specification', () => {
  test('heart rate: every field comes back', () => {
    const reading = fc.record({
      bpm: u16,
      wide: fc.boolean(),
      contact: fc.integer({ min: 0, max: 3 }),
      energy: fc.option(u16),
      rr: fc.option(fc.array(u16, { maxLength: 7 })),
      reserved: fc.integer({ min: 0, max: 7 }),
    });
    void fc.assert(
      fc.property(reading, ({ bpm, wide, contact, energy, rr, reserved }) => {
        const isWide = wide || bpm > 0xff;
        const flags =
          (isWide ? 1 : 0) |
          (contact << 1) |
          (energy === null ? 0 : 8) |
          (rr === null ? 0 : 16) |
          (reserved << 5);
        const bytes = [flags, low(bpm), ...(isWide ? [high(bpm)] : [])];
        if (energy !== null) bytes.push(low(energy), high(energy));
        for (const x of rr ?? []) bytes.push(low(x), high(x));
        expect(readHeartRate(view(...bytes))).toEqual({
          bpm,
          contact: contact < 2 ? null : contact === 3,
          energyKJ: energy,
          rrS: (rr ?? []).map((x) => x / 1024),
        });
      }),
      { numRuns: 10_000 },
    );
  });

  test('running: every field comes back', () => {
    const reading = fc.record({
      speed: u16,
      cadence: fc.integer({ min: 0, max: 0xff }),
      stride: fc.option(u16),
      distance: fc.option(fc.integer({ min: 0, max: 0xffffffff })),
      running: fc.boolean(),
    });
    void fc.assert(
      fc.property(reading, ({ speed, cadence, stride, distance, running }) => {
        const flags = (stride === null ? 0 : 1) | (distance === null ? 0 : 2) | (running ? 4 : 0);
        const bytes = [flags, low(speed), high(speed), cadence];
        if (stride !== null) bytes.push(low(stride), high(stride));
        if (distance !== null) for (const shift of [0, 8, 16, 24]) bytes.push((distance >>> shift) & 0xff);
        expect(readRunning(view(...bytes))).toEqual({
          speedMps: speed / 256,
          cadencePerMin: cadence,
          strideM: stride === null ? null : stride / 100,
          distanceM: distance === null ? null : distance / 10,
          running,
        });
      }),
      { numRuns: 10_000 },
    );
  });
});

describe('10 000 packets of any bytes', () => {
  test('are read or refused, never thrown at', () => {
    void fc.assert(
      fc.property(fc.uint8Array({ maxLength: 24 }), (bytes) => {
        const packet = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
        const heart = readHeartRate(packet);
        const running = readRunning(packet);
        if (heart !== null) expect(heart.bpm).toBeLessThanOrEqual(0xffff);
        if (running !== null) expect(running.speedMps).toBeLessThan(256);
      }),
      { numRuns: 10_000 },
    );
  });
});

test('cadence of strides is told from one of steps', () => {
  const at = (cadencePerMin: number, speedMps: number) =>
    stepsPerMin({ cadencePerMin, speedMps, strideM: null, distanceM: null, running: true });
  expect(at(88, 3.2)).toBe(176);
  expect(at(176, 3.2)).toBe(176);
  expect(at(100, 1.4)).toBe(100);
  expect(at(0, 3)).toBeNull();
});
