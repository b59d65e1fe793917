import type { Week } from '../../core/practice/sessions/progression.ts';
import { READY_MADE_TEXT } from '../../core/practice/sessions/readyMade.ts';
import type { PracticeModel } from '../../session/practiceModel.ts';
import { TableBehind } from '../review/details.tsx';

const sessionText = ({ which, wish }: Week['sessions'][number]): string => {
  const min = wish.thresholdMin ?? wish.longMin;
  return `${READY_MADE_TEXT[which].title}${min === undefined ? '' : `, ${min} min`}`;
};

const GROWS: Readonly<Record<Week['grows'], string>> = {
  nothing: '–',
  threshold: 'the threshold',
  long: 'the long run',
};

/** Weeks that grow one thing at a time and ease every fourth. */
export const Weeks = ({ model }: { model: PracticeModel }) => (
  <section aria-label="Weeks">
    <h2>Over the weeks</h2>
    <p class="note">
      Three sessions a week besides easy running, from your longest run of late. One thing grows at a time;
      every fourth week eases. Leave out what does not fit, and never make up for it.
    </p>
    <TableBehind
      title="Eight weeks"
      head={['week', 'grows', 'first', 'second', 'third']}
      rows={model.weeks.value.map((w) => [
        `${w.number}${w.eases ? ', easier' : ''}`,
        GROWS[w.grows],
        ...w.sessions.map(sessionText),
      ])}
    />
  </section>
);
