import { LEG_NAMES, legName } from '../../core/practice/names.ts';
import { message } from '../../core/units/message.ts';
import { t } from '../../languages/text.ts';
import type { LivePractice } from '../../session/practice/practiceLive.ts';
import type { PracticeModel } from '../../session/practice/practiceModel.ts';
import { clock, distance, pace, unitName } from '../format.ts';
import { HoldButton } from '../parts/holdButton.tsx';
import { signed } from '../review/charts.tsx';
import { LATEST_RUN } from '../route.ts';
import { extentText, targetText } from './legText.ts';

const STOP_HOLD_MS = 2000;
const RECEPTION = {
  waiting: message('waiting for the first position'),
  good: message('position good'),
  degraded: message('position weak'),
  lost: message('no position'),
  denied: message('position refused: choose indoors, or allow it'),
  absent: message('no position on this device'),
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
      <h1>{now ? t(legName(now.leg)) : plan.name}</h1>
      {view.phase === 'before' && (
        <>
          <p>{plan.place === 'road' ? t(RECEPTION[practice.reception.value]) : t('indoors')}</p>
          <button type="button" class="main-button" onClick={() => practice.press('start')}>
            {t('Start||press')}
          </button>
        </>
      )}
      {view.phase === 'over' && <p>{t('Done. You find it under Past runs.')}</p>}
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
            {view.heartBpm !== null && ` · ${t('{n} beats', { n: Math.round(view.heartBpm) })}`}
            {view.going !== null && ` · ${distance(view.going.distanceM, unit)} ${unitName(unit)}`}
          </p>
          {plan.course !== undefined && view.going !== null && view.going.by !== 'pod' && (
            <p class="note">
              {view.going.by === 'line' ? t('On the course') : t('Off the course: by position alone')}
            </p>
          )}
          <button type="button" class="main-button" onClick={() => practice.press('marker')}>
            {left === null ? t('Next leg') : t('Ask')}
          </button>
          {next !== undefined && (
            <p class="note">
              {t('Then {leg}: {extent}, {target}', {
                leg: LEG_NAMES[next.kind],
                extent: extentText(next, unit),
                target: targetText(next, unit),
              })}
            </p>
          )}
        </>
      )}
      <p role="status">{practice.lastCall.value?.utterance.text ?? ''}</p>
      {view.phase === 'running' ? (
        <HoldButton label={t('Hold to stop')} holdMs={STOP_HOLD_MS} onHold={() => practice.press('stop')} />
      ) : (
        <>
          {view.phase === 'over' && (
            <button
              type="button"
              class="main-button"
              onClick={() => {
                model.leave();
                location.hash = LATEST_RUN;
              }}
            >
              {t('Look at this session')}
            </button>
          )}
          <button type="button" onClick={model.leave}>
            {view.phase === 'over' ? t('Done') : t('Switch off')}
          </button>
        </>
      )}
    </main>
  );
};
