import { useSignal } from '@preact/signals';
import { t } from '../../languages/text.ts';
import type { PastRun, PastRuns } from '../../session/course/coursePast.ts';

interface Props {
  readonly runs: PastRuns;
  readonly onFile: (file: File) => void;
}

/** Runs that this device has kept, each of which can be the course. */
export const PastRunsList = ({ runs, onFile }: Props) => {
  const list = useSignal<readonly PastRun[] | null>(null);
  const trouble = useSignal<string | null>(null);
  const attempt = async (work: () => Promise<void>): Promise<void> => {
    try {
      trouble.value = null;
      await work();
    } catch {
      trouble.value = t('The storage of this browser does not give the runs away.');
    }
  };
  return (
    <>
      <button
        type="button"
        onClick={() =>
          void attempt(async () => {
            list.value = await runs.list();
          })
        }
      >
        {t('From a run on this device')}
      </button>
      {trouble.value !== null && <p class="field-error">{trouble.value}</p>}
      {list.value?.length === 0 && <p class="note">{t('No run is kept here yet.')}</p>}
      {list.value !== null && list.value.length > 0 && (
        <div class="buttons">
          {list.value.map((run) => (
            <button
              key={run.id}
              type="button"
              onClick={() =>
                void attempt(async () => {
                  onFile(await runs.file(run));
                  list.value = null;
                })
              }
            >
              {run.name}
            </button>
          ))}
        </div>
      )}
    </>
  );
};
