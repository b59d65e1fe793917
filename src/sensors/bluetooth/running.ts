/**
 * RSC Measurement, characteristic 0x2A53 of the Running Speed and Cadence Service 0x1814 (Bluetooth SIG). Flags, bit by
 * bit: 0: stride length follows; 1: total distance follows; 2: running (1) or walking (0); the rest reserved. Then speed
 * uint16 in 1/256 m/s, cadence uint8 a minute, stride uint16 in 1/100 m, distance uint32 in 1/10 m. Little-endian.
 */
export const RUNNING_SERVICE = 0x1814;
export const RUNNING_MEASUREMENT = 0x2a53;

export interface RunningReading {
  readonly speedMps: number;
  /** As the pod counts: some count steps, some strides. */
  readonly cadencePerMin: number;
  readonly strideM: number | null;
  readonly distanceM: number | null;
  readonly running: boolean;
}

const STRIDE = 0x01;
const DISTANCE = 0x02;
const RUNNING = 0x04;
const FIXED_BYTES = 4;

/** Null where the packet is shorter than its flags say. */
export const readRunning = (packet: DataView): RunningReading | null => {
  if (packet.byteLength < FIXED_BYTES) return null;
  const flags = packet.getUint8(0);
  let at = FIXED_BYTES;
  let strideM: number | null = null;
  let distanceM: number | null = null;
  if (flags & STRIDE) {
    if (packet.byteLength < at + 2) return null;
    strideM = packet.getUint16(at, true) / 100;
    at += 2;
  }
  if (flags & DISTANCE) {
    if (packet.byteLength < at + 4) return null;
    distanceM = packet.getUint32(at, true) / 10;
  }
  return {
    speedMps: packet.getUint16(1, true) / 256,
    cadencePerMin: packet.getUint8(3),
    strideM,
    distanceM,
    running: (flags & RUNNING) !== 0,
  };
};

/** Nobody runs with fewer steps a minute than this; a pod that counts fewer at speed counts strides of two steps. */
const STRIDES_BELOW = 120;
const RUNS_FROM_MPS = 2;

/** Steps a minute: the specification does not say which of the two a pod counts, so it is told by the number. */
export const stepsPerMin = ({ cadencePerMin, speedMps }: RunningReading): number | null => {
  if (cadencePerMin === 0) return null;
  return speedMps >= RUNS_FROM_MPS && cadencePerMin < STRIDES_BELOW ? 2 * cadencePerMin : cadencePerMin;
};
