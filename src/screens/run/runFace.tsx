import type { LiveRun } from '../../session/liveRun.ts';
import type { RunModel } from '../../session/runModel.ts';
import { clock, distance, unitName } from '../format.ts';
import { useHold } from '../parts/hold.ts';
import { HoldButton } from '../parts/holdButton.tsx';
import { Sounding } from '../parts/sounding.tsx';

/** Longer than a touch by accident, short enough for a runner at full effort. */
const ASK_HOLD_MS = 700;
const STOP_HOLD_MS = 1500;

const positionText = (run: LiveRun): string => {
  const { signal, distanceSdM, sinceFixS } = run.view.value.progress;
  const off = `±${Math.max(1, Math.round(1.96 * distanceSdM))} m`;
  switch (signal) {
    case 'waiting':
      return run.reception.value === 'denied' ? 'No position: by the clock' : 'No position yet';
    case 'good':
      return `Position ${off}`;
    case 'poor':
      return `Poor position ${off}`;
    case 'lost':
      return Number.isFinite(sinceFixS) ? `No position for ${Math.round(sinceFixS)} s` : 'No position';
  }
};

/** Only what is not as it should be, and the position always. */
const stripText = (model: RunModel, run: LiveRun): string => {
  const lock = model.lock.value;
  const troubles = [
    ...(lock === 'held' || lock === 'video' ? [] : ['screen may go dark']),
    ...(model.sound.value === 'ready' ? [] : ['no sound: touch']),
  ];
  return [positionText(run), ...troubles].join(' · ');
};

/**
 * The face of a run: black, three figures, the whole of it one button. Drawn once a second.
 */
export const RunFace = ({ model, run }: { model: RunModel; run: LiveRun }) => {
  const view = run.view.value;
  const { unit } = run.cell.config.plan;
  const [pad, down] = useHold(
    ASK_HOLD_MS,
    () => run.press('ask'),
    () => run.press('marker'),
  );
  return (
    <main class="face" data-signal={view.progress.signal}>
      <p class="face-strip">{stripText(model, run)}</p>
      <Sounding drift={view.drift} />
      <dl class="face-figures">
        <div>
          <dt>time</dt>
          <dd class="figure">{clock(view.elapsedS ?? 0)}</dd>
        </div>
        <div>
          <dt>{unitName(unit)}</dt>
          <dd class="figure">{distance(view.progress.distanceM, unit)}</dd>
        </div>
      </dl>
      <button
        type="button"
        class="pad"
        data-down={down}
        aria-label="Press at a board. Hold to ask where you stand."
        {...pad}
      />
      <HoldButton label="Hold to stop" holdMs={STOP_HOLD_MS} onHold={() => run.press('stop')} />
    </main>
  );
};
