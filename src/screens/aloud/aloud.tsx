import type { DistanceUnit } from '../../core/units/units.ts';
import { t } from '../../languages/text.ts';
import type { AloudModel } from '../../session/aloud/aloudModel.ts';
import type { PlanModel } from '../../session/plan/planModel.ts';
import { Choice } from '../form/choice.tsx';
import { Cautions } from '../plan/fineprint.tsx';
import { ExamplePlan, NextStep, Steps } from '../plan/steps.tsx';
import { AloudLines } from './aloudLines.tsx';
import { MakeFile } from './makeFile.tsx';

interface Props {
  readonly model: AloudModel;
  readonly plan: PlanModel;
  readonly unit: DistanceUnit;
  /** The clock that the goal is by. */
  readonly goalBy: 'own' | 'gun';
}

/** Room to put the player away, and to begin before the start. */
const LEADS_S = [0, 10, 30, 60, 300] as const;
const spanText = (leadS: number): string =>
  leadS < 60 ? t('{n} s||seconds', { n: leadS }) : t('{n} min', { n: leadS / 60 });

const leadText = (leadS: number): string =>
  leadS === 0 ? t('At the start') : t('{span} before||the start', { span: spanText(leadS) });

const howText = (leadS: number, goalBy: Props['goalBy']): string => {
  if (leadS === 0)
    return goalBy === 'gun' ? t('Start it at the gun.') : t('Start it as you cross the start line.');
  const span = { span: spanText(leadS) };
  return goalBy === 'gun'
    ? t(
        'Start it {span} before the gun. A knock tells that it plays; then three short notes count down, and the long fourth is the gun.',
        span,
      )
    : t(
        'Start it {span} before you cross the start line. A knock tells that it plays; then three short notes count down, and the long fourth is the start.',
        span,
      );
};

export const AloudScreen = ({ model, plan, unit, goalBy }: Props) => {
  const isRace = model.source.value === 'race';
  return (
    <main class="aloud">
      <Steps here="aloud" />
      <header class="lead-in">
        <h1>{t('Sound file')}</h1>
        <p>
          {t(
            'The whole plan said aloud, as one file: for a player, a watch that plays music, or a phone that locks its screen.',
          )}
        </p>
      </header>
      <ExamplePlan model={plan} />
      <div class="plan-sides">
        <section class="plan-form" aria-label={t('What the file is to say')}>
          <Choice
            label={t('What is said')}
            name="aloudSource"
            options={[
              ['race', t('The race plan')],
              ['session', t('The practice session')],
            ]}
            value={model.source.value}
            onChange={(source) => {
              model.source.value = source;
            }}
          />
          {isRace && (
            <Choice
              label={t('Where you should be by now')}
              name="aloudPlaces"
              options={[
                ['boards', unit === 'km' ? t('Every kilometre') : t('Every mile')],
                ['checkpoints', t('Checkpoints alone')],
              ]}
              value={model.places.value}
              onChange={(places) => {
                model.places.value = places;
              }}
            />
          )}
          <Choice
            label={t('Voice||of the sound file')}
            name="aloudLoudness"
            options={[
              ['normal', t('Usual||voice')],
              ['loud', t('Loud: for a crowd, harsher')],
            ]}
            value={model.loudness.value}
            onChange={(loudness) => {
              model.loudness.value = loudness;
            }}
          />
          <Choice
            label={t('Start the file')}
            name="aloudLead"
            options={LEADS_S.map((leadS) => [String(leadS), leadText(leadS)] as const)}
            value={String(model.leadS.value)}
            onChange={(leadS) => {
              model.leadS.value = Number(leadS);
            }}
          />
          <p>{howText(model.leadS.value, isRace ? goalBy : 'own')}</p>
          <p class="note">
            {t(
              'It goes by the clock and knows nothing of where you are: it says where the plan has you. Paused, it is late by as long.',
            )}
          </p>
          <h2>{t('The file')}</h2>
          <MakeFile model={model} />
          <Cautions keys={['rules', 'traffic', 'chest', 'general']} />
        </section>
        <AloudLines model={model} />
      </div>
      <NextStep here="aloud" />
    </main>
  );
};
