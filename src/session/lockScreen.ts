import { effect } from '@preact/signals';
import { type DistanceUnit, metresPer } from '../core/units/units.ts';
import type { Buttons } from '../voice/device/buttons.ts';
import type { LiveRun } from './liveRun.ts';
import { nextThing } from './nextThing.ts';
import type { RunView } from './runCell.ts';

/** Wrists mirror a changed title by vibrating, some of them; more often than this would nag. */
const SHOW_EVERY_S = 5;
const EVEN_S = 0.5;

const away = (inM: number, unit: DistanceUnit): string =>
  `${(inM / metresPer(unit)).toFixed(1)} ${unit === 'km' ? 'km' : 'mi'}`;

/** What the lock screen says: the drift as the title, then what comes next. */
export const lockScreenText = (run: LiveRun, view: RunView): { title: string; line: string } => {
  const { plan } = run.cell.config;
  const { drift } = view;
  const whole = drift === null ? 0 : Math.round(Math.abs(drift.aheadS));
  const title =
    drift === null
      ? 'No reading'
      : Math.abs(drift.aheadS) < EVEN_S
        ? 'On plan'
        : `${whole} s ${drift.aheadS > 0 ? 'ahead' : 'behind'}`;
  const next = nextThing(plan, view.progress.distanceM);
  return { title, line: next === null ? '' : `${next.name} in ${away(next.inM, plan.unit)}` };
};

/** Puts the buttons to work for a run and keeps the lock screen up to date; returns what ends it. */
export const workButtons = (buttons: Buttons, run: LiveRun): (() => void) => {
  let shownS = Number.NEGATIVE_INFINITY;
  return effect(() => {
    const view = run.view.value;
    const nowS = view.atMs / 1000;
    if (nowS < shownS + SHOW_EVERY_S) return;
    shownS = nowS;
    const { title, line } = lockScreenText(run, view);
    buttons.show(title, line);
  });
};
