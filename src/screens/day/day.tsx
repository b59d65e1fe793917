import type { CivilDate } from '../../core/prepare/day/civil.ts';
import { addDays } from '../../core/prepare/day/civil.ts';
import { timeOfDayText } from '../../core/prepare/format.ts';
import { t } from '../../languages/text.ts';
import type { PlanModel } from '../../session/plan/planModel.ts';
import type { DaySheet } from '../../session/prepare/prepareDay.ts';
import type { PrepareModel } from '../../session/prepare/prepareModel.ts';
import type { Reminders } from '../../session/prepare/prepareReminders.ts';
import { weekdayName } from '../format.ts';
import { fileNameOf, saveFile } from '../parts/files.tsx';
import { Cautions, Sources } from '../plan/fineprint.tsx';
import { ExamplePlan, NextStep, Steps } from '../plan/steps.tsx';
import { DayForm } from './dayForm.tsx';

interface Props {
  readonly model: PrepareModel;
  readonly plan: PlanModel;
  readonly reminders: Reminders;
}

const awayText = (days: number | null): string => {
  if (days === null) return '';
  if (days === 0) return t('Today.');
  if (days === 1) return t('Tomorrow.');
  return days > 0 ? t('In {n} days.', { n: days }) : t('That day is over.');
};

export const DayScreen = ({ model, plan, reminders }: Props) => {
  const sheet = model.day.value;
  return (
    <main class="day">
      <Steps here="day" />
      <header class="lead-in">
        <h1>{t('Race day')}</h1>
        <p>
          {t('From waking to the gun, by the clock.')} {awayText(sheet.daysAway)}
        </p>
      </header>
      <ExamplePlan model={plan} />
      <div class="plan-sides">
        <section aria-label={t('What decides the day')}>
          <DayForm model={model} plan={plan} />
        </section>
        <section class="sheet" aria-label={t('The day by the clock')}>
          <ol class="clock-list">
            {sheet.items.map((item) => (
              <li key={item.kind} class="clock-item" data-kind={item.kind}>
                <span class="figure clock-time">
                  {timeOfDayText(item.clockMin)}
                  {item.clockMin < 0 && <span class="row-note"> {t('evening before')}</span>}
                </span>
                <span>
                  <strong>{t(item.title)}</strong>
                  <span class="note clock-why">{t(item.reason)}</span>
                </span>
              </li>
            ))}
          </ol>
          <div class="buttons">
            <button
              type="button"
              disabled={sheet.date === null || sheet.items.length === 0}
              onClick={() => {
                const text = model.calendar();
                if (text !== null)
                  saveFile(fileNameOf(`${plan.plan.value.name} day`, 'ics'), 'text/calendar', text);
              }}
            >
              {t('Into the calendar (.ics)')}
            </button>
          </div>
          {sheet.date === null && (
            <p class="note">{t('With the date of the race, the day goes into your calendar.')}</p>
          )}
          <Aloud reminders={reminders} sheet={sheet} />
          <TaperList sheet={sheet} />
          <Cautions
            keys={[...sheet.items.flatMap((i) => i.cautions), ...(sheet.taper?.cautions ?? []), 'general']}
          />
          <Sources
            sources={[...sheet.items.map((i) => i.source), ...(sheet.taper ? [sheet.taper.source] : [])]}
          />
        </section>
      </div>
      <NextStep here="day" />
    </main>
  );
};

const Aloud = ({ reminders, sheet }: { reminders: Reminders; sheet: DaySheet }) => {
  const state = reminders.state.value;
  return (
    <section aria-label={t('Said aloud')}>
      <h2>{t('Said aloud')}</h2>
      <p>
        {t(
          'On race day this page tells you each step, in the same voice as in the race, as long as it is open and the screen is on. A phone puts pages to sleep: the calendar is the one that rings for certain.',
        )}
      </p>
      <div class="buttons">
        {state === 'off' ? (
          <button type="button" disabled={sheet.items.length === 0} onClick={() => void reminders.begin()}>
            {t('Tell me each step')}
          </button>
        ) : (
          <button type="button" onClick={reminders.end}>
            {t('Stop telling me')}
          </button>
        )}
        <button type="button" disabled={sheet.items.length === 0} onClick={() => void reminders.rehearse()}>
          {t('Hear how it sounds')}
        </button>
      </div>
      <p role="status" class="now-said">
        {reminders.said.value}
      </p>
      {state === 'waiting' && reminders.next.value !== null && (
        <p class="note">{t('Next: {what}. Keep this page open.', { what: reminders.next.value })}</p>
      )}
    </section>
  );
};

const dayText = (race: CivilDate, offset: number): string => {
  const { day, month } = addDays(race, offset);
  return t('{day}/{month}', { day, month });
};

const TaperList = ({ sheet }: { sheet: DaySheet }) => {
  const { taper, date, daysAway } = sheet;
  if (taper === null || date === null)
    return (
      <section aria-label={t('The last two weeks')}>
        <h2>{t('The last two weeks')}</h2>
        <p>
          {t(
            'Fill in the date, your running days and your weekly distance to see the last two weeks day by day: less running, as quick as ever.',
          )}
        </p>
      </section>
    );
  // What is over needs no plan; of a race that is over, all of it is kept.
  const isAhead = ({ dayOffset }: { readonly dayOffset: number }): boolean =>
    daysAway === null || daysAway < 0 || dayOffset >= -daysAway;
  return (
    <section aria-label={t('The last two weeks')}>
      <h2>{t('The last two weeks')}</h2>
      <p>
        {t('Less running, as quick as ever: {first} % less than your usual week, then {second} % less.', {
          first: Math.round(taper.cutPercent[0]),
          second: Math.round(taper.cutPercent[1]),
        })}
      </p>
      <div class="scroll-x">
        <table class="plan-table">
          <tbody>
            {taper.days.filter(isAhead).map((day) => (
              <tr
                key={day.dayOffset}
                data-what={day.kind === 'race' ? 'finish' : 'board'}
                data-rest={day.kind === 'rest'}
              >
                <th scope="row">
                  {weekdayName(day.weekday, 'short')} {dayText(date, day.dayOffset)}
                </th>
                <td class="words">
                  <strong>{t(day.title)}</strong>
                  {day.kind !== 'rest' && <span class="note clock-why">{t(day.detail)}</span>}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
};
