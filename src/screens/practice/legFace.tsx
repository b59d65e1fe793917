import type { LivePractice } from '../../session/practiceLive.ts';
import type { PracticeModel } from '../../session/practiceModel.ts';
import { clock, distance, pace, unitName } from '../format.ts';
import { HoldButton } from '../parts/holdButton.tsx';
import { signed } from '../review/charts.tsx';
import { extentText, targetText } from './legText.ts';

const STOP_HOLD_MS = 2000;
const RECEPTION = {
  waiting: 'waiting for the first position',
  good: 'position good',
  degraded: 'position weak',
  lost: 'no position',
  denied: 'position refused: choose indoors, or allow it',
  absent: 'no position on this device',
} as const;

/** The session under way: what is left of the leg, large; what it asks; the one button. */
export const LegFace = ({ model, practice }: { model: PracticeModel; practice: LivePractice }) => {
  const view = practice.view.value;
  const { plan } = practice.config;
  const { unit } = plan;
  const now = view.leg;
  const next = plan.legs[(now?.index ?? -1) + 1];
  const left = view.left;
  return (
    <main class="practice leg-face">
      <h1>
        {now
          ? `${now.leg.kind}${now.leg.rep ? ` ${now.leg.rep.count} of ${now.leg.rep.of}` : ''}`
          : plan.name}
      </h1>
      {view.phase === 'before' && (
        <>
          <p>{plan.place === 'road' ? RECEPTION[practice.reception.value] : 'indoors'}</p>
          <button type="button" class="main-button" onClick={() => practice.press('start')}>
            Start
          </button>
        </>
      )}
      {view.phase === 'over' && <p>Done. You find it under Runs.</p>}
      {now !== null && (
        <>
          <p class="figure leg-left">
            {left === null
              ? clock(view.legS ?? 0)
              : 'timeS' in left
                ? clock(Math.ceil(left.timeS))
                : `${Math.ceil(left.distanceM)} m`}
          </p>
          <p>
            {extentText(now.leg, unit)}, {targetText(now.leg, unit)}
          </p>
          <p class="figure">
            {view.going !== null && `${pace(1000 / view.going.speedMps, unit)} /${unitName(unit)}`}
            {view.ahead !== null && ` · ${signed(view.ahead.aheadS)} s`}
            {view.heartBpm !== null && ` · ${Math.round(view.heartBpm)} beats`}
            {view.going !== null && ` · ${distance(view.going.distanceM, unit)} ${unitName(unit)}`}
          </p>
          <button type="button" class="main-button" onClick={() => practice.press('marker')}>
            {left === null ? 'Next leg' : 'Ask'}
          </button>
          {next !== undefined && (
            <p class="note">
              Then {next.kind}: {extentText(next, unit)}, {targetText(next, unit)}
            </p>
          )}
        </>
      )}
      <p role="status">{practice.calls.value.at(-1)?.utterance.text ?? ''}</p>
      {view.phase === 'running' ? (
        <HoldButton label="Hold to stop" holdMs={STOP_HOLD_MS} onHold={() => practice.press('stop')} />
      ) : (
        <button type="button" onClick={model.leave}>
          {view.phase === 'over' ? 'Done' : 'Switch off'}
        </button>
      )}
    </main>
  );
};
