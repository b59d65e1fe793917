import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { t } from '../../languages/text.ts';
import type { LiveRun } from '../../session/run/liveRun.ts';
import type { RunModel } from '../../session/run/runModel.ts';
import { clock, distance, unitName } from '../format.ts';
import { useHold } from '../parts/hold.ts';
import { Sounding } from '../parts/sounding.tsx';
import { Guard } from './guard.tsx';
import { Level } from './level.tsx';
import { Quiet } from './quiet.tsx';
import { Stop } from './stop.tsx';

/** Longer than a touch by accident, short enough for a runner at full effort. */
const ASK_HOLD_MS = 700;
/** An open guard closes by itself after this long without a touch. */
const OPEN_MS = 15_000;

/** A figure vaguer than this is none. */
const MOST_DRIFT_SD_S = 60;
const MOST_DISTANCE_SD_M = 200;

const positionText = (run: LiveRun): string => {
  const { signal, distanceSdM, sinceFixS } = run.view.value.progress;
  const off = Math.max(1, Math.round(1.96 * distanceSdM));
  switch (signal) {
    case 'waiting':
      return run.reception.value === 'denied' ? t('No position: by the clock') : t('No position yet');
    case 'good':
      return t('Position ±{distance} m', { distance: off });
    case 'poor':
      return t('Poor position ±{distance} m', { distance: off });
    case 'lost':
      return Number.isFinite(sinceFixS)
        ? t('No position for {s} s', { s: Math.round(sinceFixS) })
        : t('No position');
  }
};

/** Only what is not as it should be, and the position always. */
const stripText = (model: RunModel, run: LiveRun): string => {
  const lock = model.lock.value;
  const troubles = [
    ...(lock === 'held' || lock === 'video' ? [] : [t('screen may go dark')]),
    ...(model.sound.value === 'ready' ? [] : [t('no sound: touch')]),
    ...(model.keeping.value === 'stored' ? [] : [t('not recorded')]),
  ];
  return [positionText(run), ...troubles].join(' · ');
};

/**
 * The face of a run: black, three figures, the whole of it one button. Drawn once a second. In the pocket a guard lies
 * over it.
 */
export const RunFace = ({ model, run }: { model: RunModel; run: LiveRun }) => {
  const view = run.view.value;
  const { progress } = view;
  const drift = view.drift !== null && view.drift.aheadSdS > MOST_DRIFT_SD_S ? null : view.drift;
  const { unit } = run.cell.config.plan;
  const pocket = model.choices.pocket.value;
  const touched = useSignal(0);
  const open = useSignal(!pocket);
  useEffect(() => {
    if (!pocket || !open.value) return;
    const timer = setTimeout(() => {
      open.value = false;
    }, OPEN_MS);
    return () => clearTimeout(timer);
  }, [pocket, open.value, touched.value]);
  const felt = (kind: 'hold' | 'press'): void => {
    touched.value++;
    // A touch is what a browser wants before it gives sound.
    void model.wake();
    model.click(kind);
  };
  const press = (event: 'ask' | 'marker' | 'level'): void => {
    felt(event === 'ask' ? 'hold' : 'press');
    run.press(event);
  };
  const [pad, down] = useHold(
    ASK_HOLD_MS,
    () => press('ask'),
    () => press('marker'),
  );
  return (
    <main class="face" data-signal={view.progress.signal}>
      <h1 class="unseen">{t('Running')}</h1>
      <p class="face-strip">{stripText(model, run)}</p>
      <Sounding drift={drift} />
      <dl class="face-figures">
        <div>
          <dt>{t('time')}</dt>
          <dd class="figure">{clock(view.elapsedS ?? 0)}</dd>
        </div>
        <div>
          <dt>{unitName(unit)}</dt>
          <dd class="figure">
            {progress.distanceSdM > MOST_DISTANCE_SD_M ? '–' : distance(progress.distanceM, unit)}
          </dd>
        </div>
      </dl>
      <button
        type="button"
        class="pad"
        data-down={down}
        aria-label={t('Press at a board. Hold to ask where you stand.')}
        {...pad}
      />
      <Level run={run} onPress={() => press('level')} />
      <div class="face-buttons">
        <Quiet
          run={run}
          onPress={() => {
            felt('press');
            run.hush();
          }}
        />
        <Stop onStop={() => run.press('stop')} />
      </div>
      {pocket && !open.value && (
        <Guard
          onOpen={() => {
            open.value = true;
            void model.wake();
            model.click('guard');
          }}
        />
      )}
    </main>
  );
};
