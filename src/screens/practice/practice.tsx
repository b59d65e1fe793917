import { useSignal } from '@preact/signals';
import type { Leg } from '../../core/plan/practicePlan.ts';
import { SUPPLY_NAMES } from '../../core/plan/supplies.ts';
import { legName } from '../../core/practice/names.ts';
import { READY_MADE, READY_MADE_TEXT } from '../../core/practice/sessions/readyMade.ts';
import { cautionTexts } from '../../core/prepare/cautions.ts';
import { listed, type Message, message } from '../../core/units/message.ts';
import type { DistanceUnit } from '../../core/units/units.ts';
import { t } from '../../languages/text.ts';
import type { PracticeModel } from '../../session/practice/practiceModel.ts';
import { clock } from '../format.ts';
import { fileNameOf, OpenFile, saveFile } from '../parts/files.tsx';
import { LegFace } from './legFace.tsx';
import { extentText, targetText } from './legText.ts';
import { SessionCourse, type SessionProps } from './sessionCourse.tsx';
import { Weeks } from './weeks.tsx';

const HEAR_RATE = 20;
const CEILING_BPM = { least: 90, most: 220 };

const legText = (leg: Leg, unit: DistanceUnit): string => {
  const values = { leg: legName(leg), extent: extentText(leg, unit), target: targetText(leg, unit) };
  const items = [...new Set(leg.take.map(({ item }) => item))];
  return items.length === 0
    ? t('{leg}: {extent}, {target}', values)
    : t('{leg}: {extent}, {target}, with {items}', {
        ...values,
        items: listed(items.map((item) => SUPPLY_NAMES[item])),
      });
};

/** The legs of what is chosen, each a line. */
const Legs = ({ model }: { model: PracticeModel }) => {
  const { legs, unit, name } = model.plan.value;
  return (
    <section aria-label={t('Legs||of a session')}>
      <h2>{name}</h2>
      <ol class="leg-list">
        {legs.map((leg, i) => {
          const text = legText(leg, unit);
          return <li key={`${i} ${text}`}>{text}</li>;
        })}
      </ol>
    </section>
  );
};

const number = (text: string, least: number, most: number): number | null => {
  const n = Number(text);
  return text.trim() !== '' && n >= least && n <= most ? n : null;
};

const Wishes = ({ model }: { model: PracticeModel }) => {
  const chosen = model.choice.value;
  const which = 'which' in chosen ? chosen.which : null;
  return (
    <div class="hear">
      {which === 'threshold' && (
        <label>
          {t('Minutes, {least} to {most}', { least: 10, most: 20 })}
          <input
            type="number"
            min={10}
            max={20}
            value={model.thresholdMin.value}
            onChange={(e) => {
              model.thresholdMin.value = number(e.currentTarget.value, 10, 20) ?? model.thresholdMin.value;
            }}
          />
        </label>
      )}
      {which === 'long' && (
        <label>
          {t('Minutes, {least} to {most}', { least: 60, most: 180 })}
          <input
            type="number"
            min={60}
            max={180}
            value={model.longMin.value}
            onChange={(e) => {
              model.longMin.value = number(e.currentTarget.value, 60, 180) ?? model.longMin.value;
            }}
          />
        </label>
      )}
      {which === 'raceWarmUp' && (
        <label>
          {t('Pen closes at (optional)')}
          <input
            type="time"
            value={model.penAt.value}
            onChange={(e) => {
              model.penAt.value = e.currentTarget.value;
            }}
          />
        </label>
      )}
      {which !== null && (
        <>
          <label>
            {t('Where')}
            <select
              value={model.indoors.value ? 'indoors' : 'road'}
              onChange={(e) => {
                model.indoors.value = e.currentTarget.value === 'indoors';
              }}
            >
              <option value="road">{t('on the road')}</option>
              <option value="indoors">{t('indoors: by time, or a foot pod')}</option>
            </select>
          </label>
          <label>
            {t('Heart rate ceiling (optional)')}
            <input
              type="number"
              min={CEILING_BPM.least}
              max={CEILING_BPM.most}
              value={model.ceiling.value ?? ''}
              onChange={(e) => {
                model.ceiling.value = number(e.currentTarget.value, CEILING_BPM.least, CEILING_BPM.most);
              }}
            />
          </label>
        </>
      )}
    </div>
  );
};

const SENSOR_TEXT = {
  heart: message('Heart rate belt: {state}'),
  footPod: message('Foot pod: {state}'),
} as const;
type Sensors = PracticeModel['sensors']['value'];
type BodySensor = keyof Sensors;
type LinkState = NonNullable<Sensors[BodySensor]>;
const LINK_STATES: Readonly<Record<LinkState, Message>> = {
  connecting: message('connecting||sensor'),
  connected: message('connected||sensor'),
  looking: message('looking||sensor'),
  off: message('off||sensor'),
};
const NOT_USED = message('not used||sensor');

const sensorText = (sensor: BodySensor, state: LinkState | undefined): string =>
  t({ ...SENSOR_TEXT[sensor], values: { state: state === undefined ? NOT_USED : LINK_STATES[state] } });

const SensorButtons = ({ model }: { model: PracticeModel }) =>
  model.hasBluetooth ? (
    <div class="buttons">
      {(['heart', 'footPod'] as const).map((sensor) => (
        <button key={sensor} type="button" onClick={() => void model.pair(sensor)}>
          {sensorText(sensor, model.sensors.value[sensor])}
        </button>
      ))}
    </div>
  ) : (
    <p class="note">
      {t('This browser cannot listen to a heart rate belt or a foot pod. Nothing here needs one.')}
    </p>
  );

const Cautions = () => (
  <ul class="note">
    {cautionTexts(['training', 'chest', 'ill', 'traffic', 'general']).map((text) => (
      <li key={text.text}>{t(text)}</li>
    ))}
    <li>
      {t(
        'A heart rate from a belt can be wrong, and a ceiling from a table is not yours. Take it from your own tests or from a doctor; how you feel comes first.',
      )}
    </li>
  </ul>
);

/** Sessions to run by ear: chosen, heard beforehand, done. */
export const PracticeScreen = ({ model, race, runs }: SessionProps) => {
  const busy = useSignal(false);
  const current = model.current.value;
  if (current !== null) return <LegFace model={model} practice={current} />;
  const chosen = model.choice.value;
  const at = model.replay.value?.atS.value ?? null;
  const begin = async (): Promise<void> => {
    busy.value = true;
    await model.prepare();
    busy.value = false;
  };
  return (
    <main class="practice">
      <header class="lead-in">
        <h1>{t('Practice||noun')}</h1>
        <p>
          {t(
            'A race is run the way it was practised. Each leg is counted in, told what it asks, and kept on its own target. Paces come from your goal.',
          )}
        </p>
      </header>
      <label>
        {t('Session')}
        <select
          value={'which' in chosen ? chosen.which : 'own'}
          onChange={(e) => {
            const which = READY_MADE.find((name) => name === e.currentTarget.value);
            if (which) model.choice.value = { which };
          }}
        >
          {READY_MADE.map((name) => (
            <option key={name} value={name}>
              {t(READY_MADE_TEXT[name].title)}
            </option>
          ))}
          {'own' in chosen && <option value="own">{t('{name} (file)', { name: chosen.own.name })}</option>}
        </select>
      </label>
      {'which' in chosen && <p>{t(READY_MADE_TEXT[chosen.which].about)}</p>}
      <Wishes model={model} />
      <Legs model={model} />
      <div class="buttons">
        <button type="button" class="main-button" disabled={busy.value} onClick={() => void begin()}>
          {t('Switch on')}
        </button>
        {at === null ? (
          <button type="button" onClick={() => void model.hear(HEAR_RATE)}>
            {t('Hear it first')}
          </button>
        ) : (
          <button type="button" onClick={model.hush}>
            {t('Stop at {time}', { time: clock(at) })}
          </button>
        )}
      </div>
      <SessionCourse model={model} race={race} runs={runs} />
      <SensorButtons model={model} />
      <div class="buttons">
        <OpenFile label={t('Open a session')} accept=".json" onText={model.openFile} />
        <button
          type="button"
          onClick={() =>
            saveFile(fileNameOf(model.plan.value.name, 'json'), 'application/json', model.file())
          }
        >
          {t('Save as a file')}
        </button>
      </div>
      <p role="status" class="note">
        {model.said.value && t(model.said.value)}
      </p>
      <Weeks model={model} />
      <section aria-label={t('Cautions')}>
        <h2>{t('Before you begin')}</h2>
        <Cautions />
      </section>
    </main>
  );
};
