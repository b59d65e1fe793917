/**
 * Heart Rate Measurement, characteristic 0x2A37 of the Heart Rate Service 0x180D (Bluetooth SIG). Flags, bit by bit:
 * 0: rate as uint16 (else uint8); 1-2: skin contact (0, 1 not supported; 2 supported, none; 3 contact); 3: energy spent
 * follows, uint16 kJ; 4: RR intervals follow, uint16 in 1/1024 s, oldest first; 5-7 reserved. Little-endian.
 */
export const HEART_RATE_SERVICE = 0x180d;
export const HEART_RATE_MEASUREMENT = 0x2a37;

export interface HeartReading {
  readonly bpm: number;
  /** Null where the belt does not tell. */
  readonly contact: boolean | null;
  readonly energyKJ: number | null;
  /** Seconds between beats, the oldest first. */
  readonly rrS: readonly number[];
}

const WIDE = 0x01;
const CONTACT_SHIFT = 1;
const ENERGY = 0x08;
const RR = 0x10;
const RR_PER_S = 1024;

/** Null where the packet is shorter than its flags say. What follows after is let be. */
export const readHeartRate = (packet: DataView): HeartReading | null => {
  if (packet.byteLength < 2) return null;
  const flags = packet.getUint8(0);
  const wide = (flags & WIDE) !== 0;
  let at = wide ? 3 : 2;
  if (packet.byteLength < at) return null;
  const bpm = wide ? packet.getUint16(1, true) : packet.getUint8(1);
  const contactBits = (flags >> CONTACT_SHIFT) & 3;
  let energyKJ: number | null = null;
  if (flags & ENERGY) {
    if (packet.byteLength < at + 2) return null;
    energyKJ = packet.getUint16(at, true);
    at += 2;
  }
  const rrS: number[] = [];
  if (flags & RR)
    for (; at + 2 <= packet.byteLength; at += 2) rrS.push(packet.getUint16(at, true) / RR_PER_S);
  return { bpm, contact: contactBits < 2 ? null : contactBits === 3, energyKJ, rrS };
};
