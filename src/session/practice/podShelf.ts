import { nextRunPod, type PodScale } from '../../core/estimate/podScale.ts';
import { readPod } from '../../core/plan/planPod.ts';
import { getKept, type Keep, tryKeep } from '../phone/pageKeep.ts';

/** What was learned of each foot pod of this runner, by the name under which the browser knows the device. */
export interface PodShelf {
  readonly of: (device: string) => PodScale | null;
  /** What a run has shown of it, for the next one. */
  readonly learn: (device: string, seen: PodScale) => void;
}

const KEY = 'soundline.footPods';
/** Nobody has more; the oldest is forgotten first. */
const MOST = 8;

const entriesOf = (keep: Keep): readonly (readonly [string, unknown])[] => {
  try {
    const kept: unknown = JSON.parse(getKept(keep, KEY) ?? '{}');
    return typeof kept === 'object' && kept !== null ? Object.entries(kept) : [];
  } catch {
    return [];
  }
};

export const createPodShelf = (keep: Keep): PodShelf => ({
  of: (device) => {
    const found = entriesOf(keep).find(([name]) => name === device);
    return found === undefined ? null : readPod(found[1]);
  },
  learn: (device, seen) => {
    const others = entriesOf(keep).filter(([name]) => name !== device);
    const all = Object.fromEntries([...others, [device, nextRunPod(seen)] as const].slice(-MOST));
    tryKeep(() => keep.setItem(KEY, JSON.stringify(all)));
  },
});
