/** What is used of Web Bluetooth; not every browser has it, and TypeScript's own library does not describe it. */
export interface Characteristic extends EventTarget {
  readonly value?: DataView;
  readonly startNotifications: () => Promise<Characteristic>;
}
export interface Gatt {
  readonly connected: boolean;
  readonly connect: () => Promise<Gatt>;
  readonly disconnect: () => void;
  readonly getPrimaryService: (
    service: number,
  ) => Promise<{ readonly getCharacteristic: (characteristic: number) => Promise<Characteristic> }>;
}
export interface Device extends EventTarget {
  /** The same for the same device on every visit of this page, and for this page alone. */
  readonly id?: string;
  readonly name?: string;
  readonly gatt?: Gatt;
}
export interface Bluetooth {
  readonly requestDevice: (options: {
    readonly filters: readonly { readonly services: readonly number[] }[];
  }) => Promise<Device>;
}

/** `looking`: lost, and tried again with growing pauses. `off`: put away by the runner. */
export type LinkState = 'connecting' | 'connected' | 'looking' | 'off';

export interface Link {
  readonly name: string;
  /** Which device: the browser's name for it, else its own. */
  readonly device: string;
  readonly close: () => void;
}

export interface LinkParts {
  readonly device: Device;
  readonly service: number;
  readonly characteristic: number;
  readonly onPacket: (packet: DataView) => void;
  readonly onState: (state: LinkState) => void;
  /** Calls back once after so many milliseconds; the result takes it back. */
  readonly after: (ms: number, then: () => void) => () => void;
}

/** First pause before another try, and the longest: a belt out of reach is looked for the whole run, sparingly. */
const FIRST_PAUSE_MS = 1000;
const LONGEST_PAUSE_MS = 30_000;

/** Holds on to one characteristic of a device: connects, listens, and comes again when the link is lost. */
export const holdLink = (parts: LinkParts): Link => {
  const { device, onState } = parts;
  let closed = false;
  let pauseMs = FIRST_PAUSE_MS;
  let takeBack = (): void => {};
  let listening: Characteristic | null = null;

  const hear = (): void => {
    const value = listening?.value;
    if (value !== undefined && !closed) parts.onPacket(value);
  };

  const stopHearing = (): void => {
    listening?.removeEventListener('characteristicvaluechanged', hear);
    listening = null;
  };

  const again = (): void => {
    stopHearing();
    if (closed) return;
    onState('looking');
    takeBack();
    takeBack = parts.after(pauseMs, () => void connect());
    pauseMs = Math.min(LONGEST_PAUSE_MS, 2 * pauseMs);
  };

  const connect = async (): Promise<void> => {
    try {
      const gatt = await device.gatt?.connect();
      const service = await gatt?.getPrimaryService(parts.service);
      const characteristic = await service?.getCharacteristic(parts.characteristic);
      if (closed || characteristic === undefined) return;
      stopHearing();
      listening = characteristic;
      characteristic.addEventListener('characteristicvaluechanged', hear);
      await characteristic.startNotifications();
      pauseMs = FIRST_PAUSE_MS;
      if (!closed) onState('connected');
    } catch {
      // Out of reach, asleep, or taken by another program: all the same to the runner.
      again();
    }
  };

  device.addEventListener('gattserverdisconnected', again);
  onState('connecting');
  void connect();
  return {
    name: device.name ?? 'unnamed',
    device: device.id ?? device.name ?? 'unnamed',
    close: () => {
      closed = true;
      takeBack();
      stopHearing();
      device.removeEventListener('gattserverdisconnected', again);
      device.gatt?.disconnect();
      onState('off');
    },
  };
};
