import type { Week } from '../../core/practice/sessions/progression.ts';
import { READY_MADE_TEXT } from '../../core/practice/sessions/readyMade.ts';
import { type Message, message } from '../../core/units/message.ts';
import { t } from '../../languages/text.ts';
import type { PracticeModel } from '../../session/practice/practiceModel.ts';
import { TableBehind } from '../review/details.tsx';

const sessionText = ({ which, wish }: Week['sessions'][number]): string => {
  const min = wish.thresholdMin ?? wish.longMin;
  const title = t(READY_MADE_TEXT[which].title);
  return min === undefined ? title : `${title}, ${min} min`;
};

const GROWS: Readonly<Record<Week['grows'], Message | null>> = {
  nothing: null,
  threshold: message('the threshold'),
  long: message('the long run'),
};

const growsText = (grows: Week['grows']): string => {
  const what = GROWS[grows];
  return what === null ? '–' : t(what);
};

/** Weeks that grow one thing at a time and ease every fourth. */
export const Weeks = ({ model }: { model: PracticeModel }) => (
  <section aria-label={t('Weeks')}>
    <h2>{t('Over the weeks')}</h2>
    <p class="note">
      {t(
        'Three sessions a week besides easy running, from your longest run of late. One thing grows at a time; every fourth week eases. Leave out what does not fit, and never make up for it.',
      )}
    </p>
    <TableBehind
      title={t('Eight weeks')}
      head={[
        t('week'),
        t('grows||column of what grows'),
        t('first||session of the week'),
        t('second||session of the week'),
        t('third||session of the week'),
      ]}
      rows={model.weeks.value.map((w) => [
        w.eases ? t('{week}, easier', { week: w.number }) : String(w.number),
        growsText(w.grows),
        ...w.sessions.map(sessionText),
      ])}
    />
  </section>
);
