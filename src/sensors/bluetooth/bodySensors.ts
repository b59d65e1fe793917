import type { Input } from '../../core/estimate/input.ts';
import { HEART_RATE_MEASUREMENT, HEART_RATE_SERVICE, readHeartRate } from './heartRate.ts';
import { type Bluetooth, holdLink, type Link, type LinkState } from './link.ts';
import { RUNNING_MEASUREMENT, RUNNING_SERVICE, readRunning, stepsPerMin } from './running.ts';

export const BODY_SENSORS = ['heart', 'footPod'] as const;
export type BodySensor = (typeof BODY_SENSORS)[number];

const ADDRESSES: Readonly<Record<BodySensor, { readonly service: number; readonly characteristic: number }>> =
  {
    heart: { service: HEART_RATE_SERVICE, characteristic: HEART_RATE_MEASUREMENT },
    footPod: { service: RUNNING_SERVICE, characteristic: RUNNING_MEASUREMENT },
  };

/** A packet as the engine eats it; null where it says nothing. A belt without contact has no rate. */
export const inputOf = (sensor: BodySensor, packet: DataView, atMs: number): Input | null => {
  if (sensor === 'heart') {
    const got = readHeartRate(packet);
    return got && { type: 'heart', atMs, bpm: got.contact === false || got.bpm === 0 ? null : got.bpm };
  }
  const got = readRunning(packet);
  return got && { type: 'footPod', atMs, speedMps: got.speedMps, stepsPerMin: stepsPerMin(got) };
};

export interface BodySensorParts {
  readonly bluetooth: Bluetooth;
  readonly nowMs: () => number;
  readonly after: (ms: number, then: () => void) => () => void;
  readonly onInput: (input: Input) => void;
  readonly onState: (sensor: BodySensor, state: LinkState) => void;
}

/** Lets the runner choose a device and listens to it. To be called in a touch; null where they chose none. */
export const pairSensor = async (sensor: BodySensor, parts: BodySensorParts): Promise<Link | null> => {
  const { service, characteristic } = ADDRESSES[sensor];
  try {
    const device = await parts.bluetooth.requestDevice({ filters: [{ services: [service] }] });
    return holdLink({
      device,
      service,
      characteristic,
      onPacket: (packet) => {
        const input = inputOf(sensor, packet, parts.nowMs());
        if (input !== null) parts.onInput(input);
      },
      onState: (state) => parts.onState(sensor, state),
      after: parts.after,
    });
  } catch {
    return null;
  }
};
