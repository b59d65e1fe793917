import { type ReadonlySignal, signal } from '@preact/signals';
import type { Input } from '../../core/estimate/input.ts';
import type { PodScale } from '../../core/estimate/podScale.ts';
import { type BodySensor, pairSensor } from '../../sensors/bluetooth/bodySensors.ts';
import type { Bluetooth, Link, LinkState } from '../../sensors/bluetooth/link.ts';
import type { PodShelf } from './podShelf.ts';

/** Belt and foot pod: paired by the runner, heard by whatever runs, the pod's scale kept for each pod. */
export interface Body {
  readonly states: ReadonlySignal<Readonly<Partial<Record<BodySensor, LinkState>>>>;
  readonly pair: (sensor: BodySensor) => Promise<void>;
  readonly footPod: () => PodScale | null;
  readonly learnPod: (seen: PodScale | null) => void;
}

export interface BodyParts {
  readonly bluetooth: Bluetooth | undefined;
  readonly nowMs: () => number;
  readonly onInput: (input: Input) => void;
  readonly pods: PodShelf;
}

export const createBody = ({ bluetooth, nowMs, onInput, pods }: BodyParts): Body => {
  const states = signal<Readonly<Partial<Record<BodySensor, LinkState>>>>({});
  const links = new Map<BodySensor, Link>();
  return {
    states,
    pair: async (sensor) => {
      if (bluetooth === undefined) return;
      links.get(sensor)?.close();
      const link = await pairSensor(sensor, {
        bluetooth,
        nowMs,
        after: (ms, then) => {
          const timer = setTimeout(then, ms);
          return () => clearTimeout(timer);
        },
        onInput,
        onState: (which, state) => {
          states.value = { ...states.value, [which]: state };
        },
      });
      if (link !== null) links.set(sensor, link);
    },
    footPod: () => {
      const link = links.get('footPod');
      return link === undefined ? null : pods.of(link.device);
    },
    learnPod: (seen) => {
      const link = links.get('footPod');
      if (link !== undefined && seen !== null) pods.learn(link.device, seen);
    },
  };
};
