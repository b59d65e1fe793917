import { effect } from '@preact/signals';
import { decimal } from '../../core/units/message.ts';
import { metresPer } from '../../core/units/units.ts';
import { t } from '../../languages/text.ts';
import type { Buttons } from '../../voice/device/buttons.ts';
import type { LiveRun } from './liveRun.ts';
import { nextThing } from './nextThing.ts';
import type { RunView } from './runCell.ts';

/** Wrists mirror a changed title by vibrating, some of them; more often than this would nag. */
const SHOW_EVERY_S = 5;
const EVEN_S = 0.5;

/** What the lock screen says: the drift as the title, then what comes next. */
export const lockScreenText = (run: LiveRun, view: RunView): { title: string; line: string } => {
  const { plan } = run.cell.config;
  const { drift } = view;
  const figure = drift === null ? 0 : Math.round(Math.abs(drift.aheadS));
  const title =
    drift === null
      ? t('No reading')
      : Math.abs(drift.aheadS) < EVEN_S
        ? t('On plan')
        : drift.aheadS > 0
          ? t('{figure} s ahead', { figure })
          : t('{figure} s behind', { figure });
  const next = nextThing(plan, view.progress.distanceM);
  if (next === null) return { title, line: '' };
  return {
    title,
    line: t('{thing} in {distance} {unit}', {
      thing: next.name,
      distance: decimal(next.inM / metresPer(plan.unit), 1),
      unit: plan.unit === 'km' ? 'km' : 'mi',
    }),
  };
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
