import type { BatteryReading } from './readyModel.ts';

/** Battery Status API, which Chromium alone has. */
interface BatteryNavigator {
  readonly getBattery?: () => Promise<BatteryReading>;
}

export const readBattery = async (nav: Navigator): Promise<BatteryReading | null> => {
  try {
    const found = await (nav as BatteryNavigator).getBattery?.();
    return found === undefined ? null : { level: found.level, charging: found.charging };
  } catch {
    return null;
  }
};

/** Room that the browser still gives this page, MB; null where it does not say. */
export const readFreeMB = async (storage: StorageManager | undefined): Promise<number | null> => {
  try {
    const { quota, usage } = (await storage?.estimate()) ?? {};
    return quota === undefined ? null : Math.floor((quota - (usage ?? 0)) / 1e6);
  } catch {
    return null;
  }
};
